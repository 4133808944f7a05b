import type { Kysely } from 'kysely';
import { type FormerRecord, formerKinds } from '#contract/archive/formerRecord.ts';
import type { BandReps } from '#contract/log/BandReps.ts';
import { namedByRecord, namedBySet } from '#contract/log/namedBySet.ts';
import type { KindName } from '#contract/records/allKinds.ts';
import { shapeFields } from '#contract/records/fields.ts';
import type { Lift } from '#contract/records/lift.ts';
import { type LoggedSet, loggedSet } from '#contract/records/loggedSet.ts';
import { kindTable } from './kindTable.ts';
import { sharedParse, valuesOf } from './rows.ts';
import type { Tables } from './schema.ts';

/** Which sets are wanted; what is left out does not narrow. Days are local dates, both ends included. */
export interface SetFilter {
  lifterId?: string | undefined;
  lift?: Lift | undefined;
  dayId?: string | undefined;
  from?: string | undefined;
  to?: string | undefined;
}

export const setFields = shapeFields(loggedSet.shape);

/** The log of the lifters that the club has, by day and order. */
export async function readSets(db: Kysely<Tables>, clubId: string, filter: SetFilter): Promise<LoggedSet[]> {
  const { lifterId, lift, dayId, from, to } = filter;
  let query = db
    .selectFrom('loggedSet')
    .innerJoin('lifter', (join) =>
      join.onRef('lifter.clubId', '=', 'loggedSet.clubId').onRef('lifter.id', '=', 'loggedSet.lifterId'),
    )
    .selectAll('loggedSet')
    .where('loggedSet.clubId', '=', clubId)
    .where('lifter.removedSeq', 'is', null);
  if (lifterId !== undefined) query = query.where('loggedSet.lifterId', '=', lifterId);
  if (lift !== undefined) query = query.where('loggedSet.lift', '=', lift);
  if (dayId !== undefined) query = query.where('loggedSet.dayId', '=', dayId);
  if (from !== undefined) query = query.where('loggedSet.doneOn', '>=', from);
  if (to !== undefined) query = query.where('loggedSet.doneOn', '<=', to);
  const rows = await query
    .orderBy('loggedSet.doneOn')
    .orderBy('loggedSet.order')
    .orderBy('loggedSet.id')
    .execute();
  const parse = sharedParse();
  return rows.map((row) => valuesOf(setFields, row, parse) as LoggedSet);
}

/** One set of the log, or null. */
export async function readSet(db: Kysely<Tables>, clubId: string, id: string): Promise<LoggedSet | null> {
  const query = db.selectFrom('loggedSet').selectAll().where('clubId', '=', clubId).where('id', '=', id);
  const row = await query.executeTakeFirst();
  return row ? (valuesOf(setFields, row) as LoggedSet) : null;
}

/** The log as an archive keeps it: a day that was removed is no longer named. */
export async function archivedSets(db: Kysely<Tables>, clubId: string): Promise<LoggedSet[]> {
  const days = new Set((await kindTable(db, clubId, 'day').live()).map(({ id }) => id));
  const sets = await readSets(db, clubId, {});
  return sets.map((set) =>
    set.dayId === null || days.has(set.dayId) ? set : { ...set, dayId: null, planNumber: null },
  );
}

/** A missed rep stretched the bands too. */
export async function bandReps(db: Kysely<Tables>, clubId: string): Promise<BandReps[]> {
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
  return [...byPairAndDay].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([, reps]) => reps);
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
