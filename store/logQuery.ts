import { type Kysely, type SqlBool, sql } from 'kysely';
import type { Lift } from '#contract/records/lift.ts';
import type { Tables } from './schema.ts';

/** Which sets are wanted; what is left out does not narrow. Days are local dates, both ends included. */
export interface SetFilter {
  lifterId?: string | undefined;
  lift?: Lift | undefined;
  dayId?: string | undefined;
  from?: string | undefined;
  to?: string | undefined;
  /** All of them stand in the note of the set, or in that of its training day; capitals of a to z do not count. */
  words?: readonly string[] | undefined;
}

/** Sets of the lifters that the club has, to be ordered and bounded by who asks. */
export function logQuery(db: Kysely<Tables>, clubId: string, filter: SetFilter) {
  const { lifterId, lift, dayId, from, to, words = [] } = filter;
  let query = db
    .selectFrom('loggedSet')
    .where('loggedSet.clubId', '=', clubId)
    .where(({ exists, selectFrom }) =>
      exists(
        selectFrom('lifter')
          .select('lifter.id')
          .whereRef('lifter.clubId', '=', 'loggedSet.clubId')
          .whereRef('lifter.id', '=', 'loggedSet.lifterId')
          .where('lifter.removedSeq', 'is', null),
      ),
    );
  if (lifterId !== undefined) query = query.where('loggedSet.lifterId', '=', lifterId);
  if (lift !== undefined) query = query.where('loggedSet.lift', '=', lift);
  if (dayId !== undefined) query = query.where('loggedSet.dayId', '=', dayId);
  if (from !== undefined) query = query.where('loggedSet.doneOn', '>=', from);
  if (to !== undefined) query = query.where('loggedSet.doneOn', '<=', to);
  if (words.length === 0) return query;
  return query.where(({ or, eb }) =>
    or([hasWords('loggedSet.note', words), eb('loggedSet.dayId', 'in', daysWith(db, clubId, words))]),
  );
}

/** Dates of sets that such words stand with, the newest first. Of the log only sets with a note are looked at, and those of days with it. */
export async function datesWith(db: Kysely<Tables>, clubId: string, filter: SetFilter): Promise<string[]> {
  const { words = [], ...rest } = filter;
  const dates = new Set<string>();
  const among = logQuery(db, clubId, rest).select('loggedSet.doneOn').distinct();
  const noted = among.where('loggedSet.note', '!=', sql.lit('')).where(hasWords('loggedSet.note', words));
  for (const { doneOn } of await noted.execute()) dates.add(doneOn);
  for (const { id } of await daysWith(db, clubId, words).execute())
    for (const { doneOn } of await among.where('loggedSet.dayId', '=', id).execute()) dates.add(doneOn);
  return [...dates].sort().reverse();
}

function daysWith(db: Kysely<Tables>, clubId: string, words: readonly string[]) {
  return db
    .selectFrom('day')
    .select('day.id')
    .where('day.clubId', '=', clubId)
    .where('day.removedSeq', 'is', null)
    .where(hasWords('day.note', words));
}

/** In a column, whatever stands around them. */
function hasWords(column: string, words: readonly string[]) {
  const one = (word: string) =>
    sql<SqlBool>`lower(${sql.ref(column)}) like ${`%${word.toLowerCase().replaceAll(/[\\%_]/g, '\\$&')}%`} escape '\\'`;
  return sql.join<SqlBool>(words.map(one), sql` and `);
}
