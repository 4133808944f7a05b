import SqliteFile from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { newClubPath } from '#store/tests/newClubPath.ts';
import { openClub } from '#store/tests/openClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { behindWrites } from './behindWrites.ts';

test('sets that wait for a large file are logged before the next large file begins', async () => {
  const path = newClubPath();
  const store = await openClub(path);
  onTestFinished(() => store.close());
  await store.importRecords(smallClub());
  const other = new SqliteFile(path);
  onTestFinished(() => void other.close());
  /** How many sets the log had when each began to hold the file, and what lets it go. */
  const begun: { sets: number; letGo: () => void }[] = [];
  async function hold(): Promise<void> {
    other.exec('begin immediate');
    const { count } = other.prepare('select count(*) as count from "loggedSet"').get() as { count: number };
    await new Promise<void>((letGo) => begun.push({ sets: count, letGo }));
    other.exec('commit');
  }
  const takeIn = behindWrites(store);
  const [first, second] = [takeIn(hold), takeIn(hold)];
  while (begun.length < 1) await store.latestSeq();
  const sets = Array.from({ length: 10 }, () => store.logSets([squatSet()]));
  begun[0]!.letGo();
  await first;
  await Promise.all(sets);
  while (begun.length < 2) await store.latestSeq();
  begun[1]!.letGo();
  await second;
  expect(begun.map((one) => one.sets)).toEqual([0, 10]);
});
