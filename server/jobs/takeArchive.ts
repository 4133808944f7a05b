import { type ArchiveLook, lookAt } from '#contract/archive/archiveLook.ts';
import { type ArchiveProblem, readArchive } from '#contract/archive/readArchive.ts';
import { openOneClub } from '#server/oneClub.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** A place in an archive that is wrong; what does not fit together stands on no one line. */
type WrongPlace = Omit<ArchiveProblem, 'line'> & { line: number | null };

/** What an archive holds and what the club does, or every place of the archive that is wrong. */
export type ArchiveTried =
  | { archive: ArchiveLook; here: ArchiveLook }
  | { problems: readonly [WrongPlace, ...WrongPlace[]] };

/** Takes the archive into a club in memory, so that everything is asked of it that would be asked of it here; changes nothing. */
export async function tryArchive(store: ClubStore, text: string): Promise<ArchiveTried> {
  const read = readArchive(text);
  if ('problems' in read) return read;
  const { records, ...rest } = read.content;
  const trial = await openOneClub(':memory:', store.who);
  try {
    await trial.importRecords(records, rest);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { field, message } = error;
    return { problems: [{ field, message, line: null }] };
  } finally {
    await trial.close();
  }
  return { archive: lookAt(read.content), here: lookAt(await store.snapshot()) };
}
