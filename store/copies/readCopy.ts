import { copyFile, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { archivePieces } from '#contract/archive/writeArchive.ts';
import type { Who } from '#contract/changes/who.ts';
import type { TextPieces } from '#contract/json/cutLists.ts';
import { filePieces } from '../filePieces.ts';
import { openStore } from '../openStore.ts';
import { writeKept } from '../writeKept.ts';
import type { CopyFile } from './keptCopies.ts';

/**
 * Gives `use` a copy as an archive, which lasts as long as that. A snapshot is opened as a copy of its own, since a file of before may
 * need today's tables; it stays as it was.
 */
export async function readCopy<Result>(
  { kind, path }: Pick<CopyFile, 'kind' | 'path'>,
  clubId: string,
  who: Who,
  use: (archive: TextPieces) => Promise<Result>,
): Promise<Result> {
  if (kind === 'replaced') return use(filePieces(path));
  // For the owner's eyes only, which mkdtemp sees to.
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-'));
  try {
    const [opened, archive] = [join(folder, 'club.sqlite'), join(folder, 'archive.json')];
    await copyFile(path, opened);
    const house = await openStore(opened);
    try {
      const store = await house.forClub(clubId, who);
      await store.snapshot((content) => writeKept(archive, archivePieces(content)));
    } finally {
      await house.close();
    }
    await rm(opened);
    return await use(filePieces(archive));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
