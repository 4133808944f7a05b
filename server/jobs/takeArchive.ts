import type { ArchiveLook } from '#contract/archive/archiveLook.ts';
import { readArchive } from '#contract/archive/readArchive.ts';
import type { ArchiveProblem } from '#contract/archive/readItem.ts';
import type { TextPieces } from '#contract/json/cutLists.ts';
import { inOwnFile } from '#store/archive.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { openStore } from '#store/openStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** A place in an archive that is wrong; what does not fit together stands on no one line. */
type WrongPlace = Omit<ArchiveProblem, 'line'> & { line: number | null };

/** What an archive holds and what the club does, or every place of the archive that is wrong. */
export type ArchiveTried =
  | { archive: ArchiveLook; here: ArchiveLook }
  | { problems: readonly [WrongPlace, ...WrongPlace[]] };

/** Takes the archive into a club of its own, so that everything is asked of it that would be asked of it here; changes nothing. */
export async function tryArchive(store: ClubStore, pieces: TextPieces): Promise<ArchiveTried> {
  const read = readArchive(pieces);
  if ('problems' in read) return read;
  try {
    const archive = await inOwnFile(store, read.content, (file) => lookInto(file, store));
    return { archive, here: await store.look() };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { field, message } = error;
    return { problems: [{ field, message, line: null }] };
  }
}

/** What came into the file, which its database counts: the archive itself would have to be read once more. */
async function lookInto(file: string, { clubId, who }: ClubStore): Promise<ArchiveLook> {
  const house = await openStore(file);
  try {
    return await (await house.forClub(clubId, who)).look();
  } finally {
    await house.close();
  }
}
