import type { Kysely } from 'kysely';
import { type FormerRecord, formerKinds } from '#contract/archive/formerRecord.ts';
import type { BandReps } from '#contract/log/BandReps.ts';
import { byDayAndOrder } from '#contract/log/byDayAndOrder.ts';
import { namedByRecord, namedBySet } from '#contract/log/namedBySet.ts';
import type { KindName } from '#contract/records/allKinds.ts';
import { shapeFields } from '#contract/records/fields.ts';
import { type LoggedSet, loggedSet } from '#contract/records/loggedSet.ts';
import { latestSeq } from './changeLog.ts';
import { kindTable } from './kindTable.ts';
import { logQuery, type SetFilter } from './logQuery.ts';
import { sharedParse, valuesOf } from './rows.ts';
import type { Tables } from './schema.ts';

export const setFields = shapeFields(loggedSet.shape);

/** The log of the lifters that the club has, by day and order. `newest`: so many at most, the newest of all. */
export async function readSets(
  db: Kysely<Tables>,
  clubId: string,
  { newest, ...filter }: SetFilter & { newest?: number },
): Promise<LoggedSet[]> {
  let query = logQuery(db, clubId, filter).selectAll('loggedSet');
  if (newest !== undefined)
    query = query
      .orderBy('loggedSet.doneOn', 'desc')
      .orderBy('loggedSet.order', 'desc')
      .orderBy('loggedSet.id', 'desc')
      .limit(newest);
  // Ordered here: a database that orders reads the whole log by day rather than what was asked for.
  return toSets(await query.execute()).sort(byDayAndOrder);
}

/** Rows as the sets that they keep. */
export function toSets(rows: readonly object[]): LoggedSet[] {
  const parse = sharedParse();
  return rows.map((row) => valuesOf(setFields, row, parse) as LoggedSet);
}

/** One set of the log, or null. */
export async function readSet(db: Kysely<Tables>, clubId: string, id: string): Promise<LoggedSet | null> {
  const query = db.selectFrom('loggedSet').selectAll().where('clubId', '=', clubId).where('id', '=', id);
  const row = await query.executeTakeFirst();
  return row ? (valuesOf(setFields, row) as LoggedSet) : null;
}

/** The sets of the log among these ids, those of lifters who are gone too. */
export async function setsByIds(
  db: Kysely<Tables>,
  clubId: string,
  ids: readonly string[],
): Promise<LoggedSet[]> {
  const sets: LoggedSet[] = [];
  for (let i = 0; i < ids.length; i += idsInOneQuery) {
    const rows = await db
      .selectFrom('loggedSet')
      .selectAll()
      .where('clubId', '=', clubId)
      .where('id', 'in', ids.slice(i, i + idsInOneQuery))
      .execute();
    sets.push(...toSets(rows));
  }
  return sets;
}

/** Well below what any database allows as parameters of one query. */
const idsInOneQuery = 500;

/** Whether any set of a training day counts. */
export async function hasSets(db: Kysely<Tables>, clubId: string, dayId: string): Promise<boolean> {
  const row = await db
    .selectFrom('loggedSet')
    .select('id')
    .where('clubId', '=', clubId)
    .where('dayId', '=', dayId)
    .where('struckAt', 'is', null)
    .limit(1)
    .executeTakeFirst();
  return row !== undefined;
}

/** The log as an archive keeps it, a day at a time: a training day that was removed is no longer named. */
export async function* archivedSets(
  db: Kysely<Tables>,
  clubId: string,
  filter: SetFilter,
): AsyncGenerator<LoggedSet, void> {
  const days = new Set((await kindTable(db, clubId, 'day').live()).map(({ id }) => id));
  const parse = sharedParse();
  let date = await dateAfter(db, clubId, filter, '');
  for (; date !== undefined; date = await dateAfter(db, clubId, filter, date)) {
    const rows = await logQuery(db, clubId, { ...filter, from: date, to: date })
      .selectAll('loggedSet')
      .execute();
    for (const set of rows.map((row) => valuesOf(fieldsByName, row, parse) as LoggedSet).sort(byDayAndOrder))
      yield set.dayId === null || days.has(set.dayId) ? set : { ...set, dayId: null, planNumber: null };
  }
}

/** As an archive writes them, which then has nothing to sort. */
const fieldsByName = setFields.toSorted((a, b) => (a.name < b.name ? -1 : 1));

async function dateAfter(
  db: Kysely<Tables>,
  clubId: string,
  filter: SetFilter,
  date: string,
): Promise<string | undefined> {
  const dates = logQuery(db, clubId, filter)
    .select('loggedSet.doneOn')
    .where('loggedSet.doneOn', '>', date)
    .orderBy('loggedSet.doneOn')
    .limit(1);
  return (await dates.executeTakeFirst())?.doneOn;
}

/** Removed gear that any set of the log names, told by one set of each setup. */
export async function formerGearOfLog(
  db: Kysely<Tables>,
  clubId: string,
  filter: SetFilter,
): Promise<FormerRecord[]> {
  const oneOfEach = logQuery(db, clubId, filter)
    .select((eb) => eb.fn.min('loggedSet.id').as('id'))
    .groupBy('loggedSet.setup');
  const rows = await db
    .selectFrom('loggedSet')
    .selectAll()
    .where('clubId', '=', clubId)
    .where('id', 'in', oneOfEach)
    .execute();
  return formerGear(db, clubId, toSets(rows));
}

/** How often each band pair was stretched on each day, and the last change in that. To be called within one reading. */
export async function bandReps(
  db: Kysely<Tables>,
  clubId: string,
): Promise<{ seq: number; bandReps: BandReps[] }> {
  const rows = await db
    .selectFrom('loggedSet')
    .select((eb) => [
      'doneOn',
      'setup',
      eb.fn.sum('made').as('made'),
      eb.fn.sum(eb.case().when('made', '<', eb.ref('reps')).then(1).else(0).end()).as('missed'),
    ])
    .where('clubId', '=', clubId)
    .where('struckAt', 'is', null)
    .where('setup', 'like', '%"bandPairId"%')
    .groupBy(['doneOn', 'setup'])
    .execute();
  const parse = sharedParse();
  const byPairAndDay = new Map<string, BandReps>();
  for (const { doneOn, setup, made, missed } of rows) {
    for (const { bandPairId } of (parse(setup) as LoggedSet['setup']).bands) {
      const key = `${bandPairId} ${doneOn}`;
      const before = byPairAndDay.get(key)?.reps ?? 0;
      byPairAndDay.set(key, { bandPairId, doneOn, reps: before + Number(made) + Number(missed) });
    }
  }
  const inOrder = [...byPairAndDay].toSorted(([a], [b]) => (a < b ? -1 : 1));
  return { seq: await latestSeq(db, clubId), bandReps: inOrder.map(([, reps]) => reps) };
}

/** Removed gear that sets name in their setups, and removed gear that this in turn names: of a hookup its rack, of a rack its bar. */
export async function formerGear(
  db: Kysely<Tables>,
  clubId: string,
  sets: readonly LoggedSet[],
): Promise<FormerRecord[]> {
  const wanted = new Map<KindName, Set<string>>(formerKinds.map((kind) => [kind, new Set()]));
  const bySetup = new Map(sets.map((set) => [set.setup, set]));
  for (const { kind, id } of [...bySetup.values()].flatMap(namedBySet)) wanted.get(kind)?.add(id);
  const former: FormerRecord[] = [];
  // Users before what they use.
  for (const kind of formerKinds.toReversed()) {
    for (const record of await kindTable(db, clubId, kind).removedAmong([...(wanted.get(kind) ?? [])])) {
      former.push({ kind, record } as FormerRecord);
      for (const named of namedByRecord(kind, record)) wanted.get(named.kind)?.add(named.id);
    }
  }
  return former;
}
