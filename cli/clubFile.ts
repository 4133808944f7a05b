import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Option } from 'commander';
import type { Who } from '#contract/changes/who.ts';
import type { OneClub } from '#server/oneClub.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { CliError } from './CliError.ts';
import { projectRoot } from './projectRoot.ts';
import { whyNotOpenClub } from './whyNotOpenClub.ts';

/** `--club`: which file holds the club. */
export function clubOption(): Option {
  return new Option('--club <file>', "the club's file")
    .env('RACKWRIGHT_CLUB')
    .default(join(projectRoot, 'club/rackwright.sqlite'), 'club/rackwright.sqlite');
}

/** Opens a club that is there; a mistyped name must not found a new one. */
export async function openExistingClub(file: string): Promise<OneClub> {
  const { finishRestore } = await import('#store/copies/restoreFile.ts');
  const { whatIsLeft } = await import('#store/open/fileFault.ts');
  await finishRestore(file).catch((error) => {
    throw new CliError(whyNotOpenClub(file, error));
  });
  if (!existsSync(file)) {
    const sentence = `There is no club in ${resolve(file)}. "rackwright serve --club ${file}" creates one.`;
    throw new CliError(whatIsLeft(file) ?? sentence);
  }
  return openClub(file);
}

/** Opens the club in `file`; where there is none founds it, and `fill` fills it. Changes bear the name of `who`. */
export async function openClub(
  file: string,
  who = terminal,
  fill?: (club: ClubStore) => Promise<void>,
): Promise<OneClub> {
  try {
    const { openOneClub } = await import('#server/oneClub.ts');
    return await openOneClub(file, who, fill);
  } catch (error) {
    throw new CliError(whyNotOpenClub(file, error));
  }
}

/** Opens the club in `file` to try something against it; where there is none, an empty one in memory: a try founds nothing. */
export async function openClubToTry(file: string): Promise<OneClub> {
  return openClub(existsSync(file) ? file : ':memory:');
}

/** Hands an open club to `work` and closes it, however that ends. */
export async function withClub<Result>(
  file: string,
  work: (store: ClubStore) => Promise<Result>,
): Promise<Result> {
  const store = await openExistingClub(file);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** Who changes a club by a command. */
export const terminal: Who = { name: 'a command in the terminal' };
