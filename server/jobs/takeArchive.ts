import { type ArchiveLook, lookAt } from '#contract/archive/archiveLook.ts';
import { readArchive } from '#contract/archive/readArchive.ts';
import type { ArchiveProblem } from '#contract/archive/readItem.ts';
import type { TextPieces } from '#contract/json/cutLists.ts';
import { inOwnFile } from '#store/archive.ts';
import type { ClubStore } from '#store/ClubStore.ts';
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
    await inOwnFile(store, read.content, async () => {});
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { field, message } = error;
    return { problems: [{ field, message, line: null }] };
  }
  return { archive: await lookAt(read.content), here: await store.look() };
}
