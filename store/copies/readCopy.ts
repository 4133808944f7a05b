import { copyFile, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { archivePieces } from '#contract/archive/writeArchive.ts';
import type { Who } from '#contract/changes/who.ts';
import type { TextPieces } from '#contract/json/cutLists.ts';
import type { ClubStore } from '../ClubStore.ts';
import { filePieces } from '../filePieces.ts';
import { openStore } from '../openStore.ts';
import { writeKept } from '../writeKept.ts';
import { type CopyFile, isArchive } from './keptCopies.ts';

/** Gives `use` a copy as an archive, which lasts as long as that. */
export async function readCopy<Result>(
  copy: Pick<CopyFile, 'path'>,
  clubId: string,
  who: Who,
  use: (archive: TextPieces) => Promise<Result>,
): Promise<Result> {
  if (isArchive(copy)) return use(filePieces(copy.path));
  // For the owner's eyes only, which mkdtemp sees to.
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-'));
  try {
    const archive = join(folder, 'archive.json');
    await openCopy(copy, clubId, who, (store) =>
      store.snapshot((content) => writeKept(archive, archivePieces(content))),
    );
    return await use(filePieces(archive));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/**
 * Opens a copy that is a club's file, as long as `use` lasts: as a copy of its own, since a file of before may need today's tables. It
 * stays as it was.
 */
export async function openCopy<Result>(
  { path }: Pick<CopyFile, 'path'>,
  clubId: string,
  who: Who,
  use: (store: ClubStore) => Promise<Result>,
): Promise<Result> {
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-'));
  try {
    const opened = join(folder, 'club.sqlite');
    await copyFile(path, opened);
    const house = await openStore(opened);
    try {
      return await use(await house.forClub(clubId, who));
    } finally {
      await house.close();
    }
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
