import { copyFile, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeArchive } from '#contract/archive/writeArchive.ts';
import type { Who } from '#contract/changes/who.ts';
import { openStore } from '../openStore.ts';
import type { CopyFile } from './keptCopies.ts';

/** A copy as an archive. A snapshot is opened as a copy of its own, since a file of before may need today's tables; it stays as it was. */
export async function readCopy(
  { kind, path }: Pick<CopyFile, 'kind' | 'path'>,
  clubId: string,
  who: Who,
): Promise<string> {
  if (kind === 'replaced') return readFile(path, 'utf8');
  // For the owner's eyes only, which mkdtemp sees to.
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-'));
  try {
    const opened = join(folder, 'club.sqlite');
    await copyFile(path, opened);
    const house = await openStore(opened);
    try {
      return writeArchive(await (await house.forClub(clubId, who)).snapshot());
    } finally {
      await house.close();
    }
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
