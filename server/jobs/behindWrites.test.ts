import { EventEmitter, once } from 'node:events';
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
  /** How many sets the log had when a large file began to hold it. */
  const setsThen: number[] = [];
  const begun = new EventEmitter();
  async function hold(): Promise<void> {
    other.exec('begin immediate');
    const { count } = other.prepare('select count(*) as count from "loggedSet"').get() as { count: number };
    setsThen.push(count);
    const goesOn = once(begun, 'letGo');
    begun.emit('hold');
    await goesOn;
    other.exec('commit');
  }
  const takeIn = behindWrites(store);
  const isHeld = once(begun, 'hold');
  const [first, second] = [takeIn(hold), takeIn(hold)];
  await isHeld;
  const sets = Array.from({ length: 10 }, () => store.logSets([squatSet()]));
  const isHeldAgain = once(begun, 'hold');
  begun.emit('letGo');
  await first;
  await Promise.all(sets);
  await isHeldAgain;
  begun.emit('letGo');
  await second;
  expect(setsThen).toEqual([0, 10]);
});
