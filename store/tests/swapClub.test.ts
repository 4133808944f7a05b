import SqliteFile from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { exportArchive, restoreArchive } from '../archive.ts';
import { openStore } from '../openStore.ts';
import { newClubPath } from './newClubPath.ts';
import { clubOf, dumps } from './olderClubs.ts';
import { openClub, tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';
import { wholeOf } from './wholeOf.ts';

async function archiveWith(sets: number): Promise<string> {
  const store = await openClub(newClubPath());
  await store.importRecords(smallClub());
  await store.logSets(Array.from({ length: sets }, () => squatSet()));
  const archive = await exportArchive(store);
  await store.close();
  return archive;
}

/** Whether SQLite would take the rows over as they stand (its transfer optimisation, of which EXPLAIN tells by this step) and put none together anew. */
function goesOverWhole(path: string, beside: string, foreignKeys: 'ON' | 'OFF'): boolean {
  const file = new SqliteFile(path);
  try {
    file.pragma(`foreign_keys = ${foreignKeys}`);
    file.prepare('attach ? as beside').run(beside);
    const steps = file
      .prepare('explain insert into main."loggedSet" select * from beside."loggedSet"')
      .all() as { opcode: string }[];
    return steps.some(({ opcode }) => opcode === 'RowCell' || opcode === 'RowData');
  } finally {
    file.close();
  }
}

test.each(dumps)('the log of a club as %s kept it goes over as a whole table', async (dump) => {
  const path = clubOf(dump);
  const fresh = newClubPath();
  for (const file of [path, fresh]) await (await openStore(file)).close();
  expect(goesOverWhole(path, fresh, 'OFF')).toBe(true);
  expect(goesOverWhole(path, fresh, 'ON')).toBe(false);
});

test('a club with a log takes the place of one with a log, and its foreign keys hold on', async () => {
  const path = newClubPath();
  const store = await openClub(path);
  onTestFinished(store.close);
  await store.importRecords(smallClub());
  await store.logSets([squatSet(), squatSet()]);
  const archive = await archiveWith(3);
  await restoreArchive(store, [archive]);
  expect(await exportArchive(store)).toBe(archive);
  await store.logSets([squatSet()]);
  const file = new SqliteFile(path, { readonly: true });
  onTestFinished(() => void file.close());
  expect(file.pragma('foreign_key_check')).toEqual([]);
  expect(file.pragma('integrity_check', { simple: true })).toBe('ok');
});

test('where a file holds two clubs, the other one stays as it was', async () => {
  const house = await openStore(newClubPath());
  onTestFinished(house.close);
  for (const club of ['a', 'club', 'z']) await house.found(club);
  const club = await house.forClub('club', tester);
  const others = await Promise.all(['a', 'z'].map((id) => house.forClub(id, tester)));
  for (const one of [club, ...others]) {
    await one.importRecords(smallClub());
    await one.logSets([squatSet()]);
  }
  const before = await Promise.all(others.map(wholeOf));
  const archive = await archiveWith(3);
  await restoreArchive(club, [archive]);
  expect(await exportArchive(club)).toBe(archive);
  expect(await Promise.all(others.map(wholeOf))).toEqual(before);
});
