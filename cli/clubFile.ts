import { existsSync, mkdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { Option } from 'commander';
import type { ClubStore } from '#store/ClubStore.ts';
import { CliError } from './CliError.ts';
import { projectRoot } from './projectRoot.ts';

/** `--club`: which file holds the club. */
export function clubOption(): Option {
  return new Option('--club <file>', "the club's file")
    .env('RACKWRIGHT_CLUB')
    .default(join(projectRoot, 'club/rackwright.sqlite'), 'club/rackwright.sqlite');
}

/** Opens a club that is there; a mistyped name must not found a new one. */
export async function openExistingClub(file: string): Promise<ClubStore> {
  if (!existsSync(file)) {
    throw new CliError(`There is no club in ${resolve(file)}. "rackwright serve --club ${file}" founds one.`);
  }
  return openClub(file);
}

/** Opens the club in `file`; founds it where there is none. */
export async function openClub(file: string): Promise<ClubStore> {
  mkdirSync(dirname(resolve(file)), { recursive: true });
  const { openClubStore } = await import('#store/openClubStore.ts');
  return openClubStore(file);
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
