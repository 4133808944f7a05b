import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ArchiveContent } from '#contract/archive/archiveContent.ts';
import { readArchive } from '#contract/archive/readArchive.ts';
import { archivePieces, writeArchive } from '#contract/archive/writeArchive.ts';
import type { TextPieces } from '#contract/json/cutLists.ts';
import type { ClubStore } from './ClubStore.ts';
import { openStore } from './openStore.ts';
import { Refusal } from './Refusal.ts';
import { writeKept } from './writeKept.ts';

/** The whole club as one JSON text, without what was removed. */
export function exportArchive(store: ClubStore): Promise<string> {
  return store.snapshot(writeArchive);
}

/**
 * Replaces the whole club by an archive, all or nothing. What the club was until that moment is kept in a file beside the club's own,
 * which is on the disk before the club is another: a club's file, or an archive where the database is none.
 */
export async function restoreArchive(
  store: ClubStore,
  pieces: TextPieces,
): Promise<{ seq: number; keptAs: string }> {
  const read = readArchive(pieces);
  if ('problems' in read) throw new Refusal('invalid', read.problems[0].field, read.problems[0].message);
  return inOwnFile(store, read.content, async (beside) => {
    const kept = `${store.path}.before-restore-${new Date().toISOString().replaceAll(/[:.]/g, '-')}`;
    if (store.swapAll) {
      const keptAs = `${kept}.sqlite`;
      const { seq } = await store.swapAll({ beside, keptAs });
      return { seq, keptAs };
    }
    const keptAs = `${kept}.json`;
    const { seq } = await store.replaceAll(read.content, (before) =>
      writeKept(keptAs, archivePieces(before)),
    );
    return { seq, keptAs };
  });
}

/**
 * Makes a club of its own of what an archive holds, in a file that lasts as long as `use`: everything is asked of it that would be asked
 * of it in the club's place, and nobody waits for that.
 */
export async function inOwnFile<Result>(
  { clubId, who }: Pick<ClubStore, 'clubId' | 'who'>,
  { records, ...rest }: ArchiveContent,
  use: (file: string) => Promise<Result>,
): Promise<Result> {
  // For the owner's eyes only, which mkdtemp sees to.
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-'));
  try {
    const file = join(folder, 'club.sqlite');
    const house = await openStore(file);
    try {
      await house.found(clubId);
      await (await house.forClub(clubId, who)).importRecords(records, rest);
    } finally {
      await house.close();
    }
    return await use(file);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
