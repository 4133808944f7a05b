import { type ArchiveLook, lookAt } from '#contract/archive/archiveLook.ts';
import { readArchive } from '#contract/archive/readArchive.ts';
import { restoreArchive } from '#store/archive.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import type { CopyFile } from '#store/copies/keptCopies.ts';
import { readCopy } from '#store/copies/readCopy.ts';
import { Refusal } from '#store/Refusal.ts';

/** Puts a copy in the place of the whole club; what was there is kept as another copy. */
export async function restoreCopy(
  store: ClubStore,
  copy: CopyFile,
): Promise<{ seq: number; keptAs: string }> {
  return readCopy(copy, store.clubId, store.who, (archive) => restoreArchive(store, archive));
}

/** What a copy holds, beside what is here now. */
export async function lookIntoCopy(
  store: ClubStore,
  copy: CopyFile,
): Promise<{ archive: ArchiveLook; here: ArchiveLook }> {
  return readCopy(copy, store.clubId, store.who, async (archive) => {
    const read = readArchive(archive);
    if ('problems' in read)
      throw new Refusal('conflict', 'name', `${copy.name}: ${read.problems[0].message}`);
    return { archive: await lookAt(read.content), here: await store.snapshot(lookAt) };
  });
}
