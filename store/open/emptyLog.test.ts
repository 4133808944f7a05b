import { copyFileSync, renameSync } from 'node:fs';
import Database from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { newClubPath } from '../tests/newClubPath.ts';
import { openClub } from '../tests/openClub.ts';
import { smallClub } from '../tests/smallClub.ts';
import { squatSet } from '../tests/squatSet.ts';
import { emptyLog } from './emptyLog.ts';

/** How many sets the file alone holds, without the log beside it. */
function setsInFileAlone(path: string): number {
  const alone = `${path}.alone`;
  copyFileSync(path, alone);
  const file = new Database(alone);
  const { count } = file.prepare('select count(*) as count from "loggedSet"').get() as { count: number };
  file.close();
  return count;
}

async function openWithSets() {
  const path = newClubPath();
  const store = await openClub(path);
  onTestFinished(() => store.close());
  await store.importRecords(smallClub());
  await store.logSets([squatSet()]);
  emptyLog(path, store.mark);
  await store.logSets([squatSet()]);
  return { path, store };
}

test('what stands in the write-ahead log is taken over into the file while the club is open', async () => {
  const { path, store } = await openWithSets();
  expect(setsInFileAlone(path)).toBe(1);
  emptyLog(path, store.mark);
  expect(setsInFileAlone(path)).toBe(2);
  await store.logSets([squatSet()]);
  expect(await store.loggedSets()).toHaveLength(3);
  expect(store.trouble()).toBeNull();
});

test('the log of another file that stands in its place is not touched', async () => {
  const { path, store } = await openWithSets();
  renameSync(path, `${path}.old`);
  copyFileSync(`${path}.old`, path);
  expect(() => emptyLog(path, store.mark)).toThrow(/was removed, moved or replaced/);
  renameSync(`${path}.old`, path);
});
