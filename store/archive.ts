import { readArchive } from '#contract/archive/readArchive.ts';
import { archivePieces, writeArchive } from '#contract/archive/writeArchive.ts';
import type { TextPieces } from '#contract/json/cutLists.ts';
import type { ClubStore } from './ClubStore.ts';
import { Refusal } from './Refusal.ts';
import { writeKept } from './writeKept.ts';

/** The whole club as one JSON text, without what was removed. */
export function exportArchive(store: ClubStore): Promise<string> {
  return store.snapshot(writeArchive);
}

/**
 * Replaces the whole club by an archive, all or nothing. What the club was until that moment is kept as an archive in a file beside
 * the club's own, which is on the disk before the club is another.
 */
export async function restoreArchive(
  store: ClubStore,
  pieces: TextPieces,
): Promise<{ seq: number; keptAs: string }> {
  const read = readArchive(pieces);
  if ('problems' in read) throw new Refusal('invalid', read.problems[0].field, read.problems[0].message);
  let keptAs = '';
  const { seq } = await store.replaceAll(read.content, async (before) => {
    keptAs = `${store.path}.before-restore-${new Date().toISOString().replaceAll(/[:.]/g, '-')}.json`;
    await writeKept(keptAs, archivePieces(before));
  });
  return { seq, keptAs };
}
