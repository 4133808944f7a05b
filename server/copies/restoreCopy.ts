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
  return restoreArchive(store, await readCopy(copy, store.clubId, store.who));
}

/** What a copy holds, beside what is here now. */
export async function lookIntoCopy(
  store: ClubStore,
  copy: CopyFile,
): Promise<{ archive: ArchiveLook; here: ArchiveLook }> {
  const read = readArchive(await readCopy(copy, store.clubId, store.who));
  if ('problems' in read) throw new Refusal('conflict', 'name', `${copy.name}: ${read.problems[0].message}`);
  return { archive: lookAt(read.content), here: lookAt(await store.snapshot()) };
}
