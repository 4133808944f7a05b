import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Who } from '#contract/changes/who.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import type { CopyFile } from '#store/copies/keptCopies.ts';
import { finishRestore, restoreFile } from '#store/copies/restoreFile.ts';
import { whatIsLeft } from '#store/open/fileFault.ts';
import { makeWhole } from '#store/open/makeWhole.ts';
import { openStore } from '#store/openStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** A club and, with it, the file that it has to itself. */
export interface OneClub extends ClubStore {
  close(): Promise<void>;
}

/**
 * Opens the one club of a file for somebody. Where there is no file one is made with a club in it, which `fill` may fill: the file is
 * there with all of that or not at all. Refused where copies tell that one was there.
 */
export async function openOneClub(
  file: string,
  who: Who,
  fill: (club: ClubStore) => Promise<void> = async () => {},
): Promise<OneClub> {
  if (file === inMemory) return opened(file, who, true);
  await finishRestore(file);
  if (!existsSync(file)) {
    const left = whatIsLeft(file);
    if (left !== null) throw new Refusal('unavailable', '', left);
    await makeWhole(file, async (beside) => {
      try {
        const club = await opened(beside, who, true);
        await fill(club).finally(() => club.close());
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        // Whoever reads it knows the file by its own name.
        throw new Refusal(error.reason, error.field, error.message.replaceAll(beside, file));
      }
    });
  }
  return opened(file, who, false);
}

/** Puts a copy where the one club's file is damaged or gone; says where the damaged one is now, null where there was none. */
export async function restoreOneClub(
  file: string,
  copy: Pick<CopyFile, 'name' | 'kind' | 'path'>,
  who: Who,
): Promise<string | null> {
  return restoreFile(file, copy, { clubId, who });
}

async function opened(file: string, who: Who, isNew: boolean): Promise<OneClub> {
  const { found, forClub, close } = await openStore(file);
  try {
    if (isNew) await found(clubId);
    return { ...(await forClub(clubId, who).catch(inWords(file))), close };
  } catch (error) {
    await close();
    throw error;
  }
}

function inWords(file: string) {
  return (error: unknown): never => {
    if (!(error instanceof Refusal && error.reason === 'missing')) throw error;
    const sentence = `${resolve(file)} holds no club; a start that was cut short may have left it. It was not changed: put a good copy in its place or take it away, then start again.`;
    throw new Refusal('missing', '', sentence);
  };
}

/** SQLite's name for a database without a file. */
const inMemory = ':memory:';
/** The id of a club in a file of its own; where several share a database each has another. */
const clubId = 'club';
