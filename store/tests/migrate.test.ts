import { readdirSync, statSync } from 'node:fs';
import Database from 'better-sqlite3';
import type { Kysely } from 'kysely';
import { describe, expect, test } from 'vitest';
import { type KindName, kindNames } from '#contract/records/allKinds.ts';
import { fieldsOf } from '#contract/records/fields.ts';
import { loggedSet } from '#contract/records/loggedSet.ts';
import { migrate, migrations } from '../migrate.ts';
import { openSqlite } from '../open/sqlite.ts';
import { newClubPath } from './newClubPath.ts';
import { clubOf, dumps, oldClub } from './olderClubs.ts';
import { openClub, tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

describe('an older club file', () => {
  test('is kept here of every version before the last', () => {
    const earlier = Object.keys(migrations).slice(0, -1);
    expect(dumps).toEqual(earlier.map((name) => `${name}.sql`));
  });

  test('comes to today by every step of the folder, each under the name of its file', () => {
    const files = readdirSync(new URL('../migrations/', import.meta.url)).sort();
    expect(Object.keys(migrations).map((name) => `${name}.ts`)).toEqual(files);
  });

  test.each(dumps)('of version %s opens with all it had and takes new records', async (dump) => {
    const path = clubOf(dump);
    const store = await openClub(path);
    const had = oldClub(dump);
    expect(had.bar).toHaveLength(2);
    expect((await store.records()).records).toEqual(had);
    await store.addPrescription('day-1', '2026-11-25T05:00:00.000Z', {});
    const { sets } = await store.logSets([squatSet()]);
    const { seq } = await store.remove('scaleReading', 'scale-1');
    await store.undo(seq);
    await store.close();
    const again = await openClub(path);
    expect((await again.records()).records).toEqual(had);
    expect(await again.latestSeq()).toBe(seq + 1);
    expect(await again.loggedSets()).toEqual(sets);
    await again.close();
  });

  test('takes a change back that was made before heights had a bar path, and keeps a path', async () => {
    const store = await openClub(clubOf('0002-history.sql'));
    const [now] = smallClub().liftHeights;
    // Change 2 made the lockout 1.21 m where it was 1.2 m.
    await store.undo(2);
    expect(await store.list('liftHeights')).toEqual([{ ...now, lockoutM: 1.2 }]);
    const { id, ...fields } = now!;
    await store.update('liftHeights', id, { ...fields, bottomForwardM: -0.05 });
    expect(await store.list('liftHeights')).toEqual([{ ...now, bottomForwardM: -0.05 }]);
    await store.close();
  });

  test('of before changes had a maker says that nobody is known, and that one which names nothing may have replaced all', async () => {
    const store = await openClub(clubOf('0002-history.sql'));
    await store.create('bar', { label: 'New', massKg: 20 });
    const changes = await store.changesAfter(0);
    // Change 1 took the club in, change 2 made a lockout higher, change 3 solved a day, which cannot be told from the first.
    expect(changes.map(({ who, replaced }) => [who, replaced])).toEqual([
      [null, true],
      [null, false],
      [null, true],
      [tester, false],
    ]);
    await store.close();
  });

  test('with bounds of one group tells it how sure strength must be as the club does', async () => {
    const path = clubOf('0005-bounds.sql');
    const old = new Database(path);
    const ofGroup = { leastBarShare: 0.5, leastBandShare: 0.2, mostBandShare: 0.3, mostPairs: 2 };
    old
      .prepare("update day set groups = json_set(groups, '$[0].bounds', json(?))")
      .run(JSON.stringify(ofGroup));
    old.close();
    const store = await openClub(path);
    const [day] = await store.list('day');
    expect(day!.groups[0]!.bounds).toEqual({ ...ofGroup, strengthChance: 0.75 });
    await store.close();
  });

  test('of a later version than the program is refused in one sentence', async () => {
    const path = newClubPath();
    await (await openClub(path)).close();
    const file = new Database(path);
    file.prepare("insert into kysely_migration values ('9999-later', '2030-01-01T00:00:00.000Z')").run();
    file.close();
    await expect(openClub(path)).rejects.toThrow('later version');
  });
});

test('a migration that is cut off leaves the file as it was', async () => {
  const path = newClubPath();
  await (await openClub(path)).close();
  const half = {
    async up(db: Kysely<unknown>) {
      await db.schema.createTable('half').addColumn('id', 'text').execute();
      throw new Error('The power went.');
    },
  };
  const { db } = await openSqlite(path);
  await expect(migrate(db, { ...migrations, '9999-half': half })).rejects.toThrow('power');
  await db.destroy();
  const file = new Database(path, { readonly: true });
  expect(file.prepare("select name from sqlite_master where name = 'half'").all()).toEqual([]);
  file.close();
});

describe('the file', () => {
  test('has a column for every field of every kind, and no others', async () => {
    const path = newClubPath();
    await (await openClub(path)).close();
    const file = new Database(path, { readonly: true });
    const columns = (kind: KindName) => file.pragma(`table_info(${kind})`) as { name: string }[];
    for (const kind of kindNames) {
      const fields = fieldsOf(kind).map(({ name }) => name);
      expect(
        columns(kind)
          .map(({ name }) => name)
          .sort(),
      ).toEqual([...fields, 'clubId', 'removedSeq'].sort());
    }
    const ofSet = file.pragma('table_info(loggedSet)') as { name: string }[];
    const fields = Object.keys(loggedSet.shape);
    expect(ofSet.map(({ name }) => name).sort()).toEqual([...fields, 'clubId'].sort());
    // Who else uses this machine does not read it.
    expect(statSync(path).mode & 0o077).toBe(0);
    expect(file.pragma('journal_mode', { simple: true })).toBe('wal');
    file.close();
  });

  test('itself refuses an owner that is not there', async () => {
    const path = newClubPath();
    await (await openClub(path)).close();
    const file = new Database(path);
    file.pragma('foreign_keys = ON');
    const insert = file.prepare(
      "insert into bodyMass (clubId, id, lifterId, takenOn, massKg) values ('club', 'm', 'nobody', '2026-11-25', 80)",
    );
    expect(() => insert.run()).toThrow('FOREIGN KEY');
    file.close();
  });
});
