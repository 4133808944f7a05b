import { type ArchiveLook, lookAt } from '#contract/archive/archiveLook.ts';
import { readArchive } from '#contract/archive/readArchive.ts';
import { restoreArchive } from '#store/archive.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { type CopyFile, isArchive } from '#store/copies/keptCopies.ts';
import { openCopy, readCopy } from '#store/copies/readCopy.ts';
import { filePieces } from '#store/filePieces.ts';
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
  const archive = isArchive(copy)
    ? await lookIntoArchive(copy)
    : await openCopy(copy, store.clubId, store.who, (copied) => copied.look());
  return { archive, here: await store.look() };
}

async function lookIntoArchive({ name, path }: CopyFile): Promise<ArchiveLook> {
  const read = readArchive(filePieces(path));
  if ('problems' in read) throw new Refusal('conflict', 'name', `${name}: ${read.problems[0].message}`);
  return lookAt(read.content);
}
