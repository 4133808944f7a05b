import { writeFile } from 'node:fs/promises';
import { readArchive } from '#contract/archive/readArchive.ts';
import { writeArchive } from '#contract/archive/writeArchive.ts';
import type { ClubStore } from './ClubStore.ts';
import { Refusal } from './Refusal.ts';

/** The whole club as one JSON text, without what was removed. */
export async function exportArchive(store: ClubStore): Promise<string> {
  return writeArchive(await store.snapshot());
}

/**
 * Replaces the whole club by an archive, all or nothing. What the club was before is kept as an archive in a file beside
 * the club's own.
 */
export async function restoreArchive(
  store: ClubStore,
  text: string,
): Promise<{ seq: number; keptAs: string }> {
  const read = readArchive(text);
  if ('problems' in read) throw new Refusal('invalid', read.problems[0].field, read.problems[0].message);
  const moment = new Date().toISOString().replaceAll(/[:.]/g, '-');
  const keptAs = `${store.path}.before-restore-${moment}.json`;
  await writeFile(keptAs, await exportArchive(store), { flag: 'wx', mode: 0o600 });
  const { records, ...rest } = read.content;
  const { seq } = await store.importRecords(records, rest);
  return { seq, keptAs };
}
