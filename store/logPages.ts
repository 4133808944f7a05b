import { type Kysely, sql } from 'kysely';
import { byDayAndOrder } from '#contract/log/byDayAndOrder.ts';
import type { LogDays } from '#contract/log/logDay.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { datesWith, logQuery, type SetFilter } from './logQuery.ts';
import { toSets } from './readSets.ts';
import type { Tables } from './schema.ts';

/** Where a page of sets ended: pages go on from there, whatever was logged or struck meanwhile. */
export type PageEnd = Pick<LoggedSet, 'doneOn' | 'lifterId' | 'order' | 'id'>;

/** A page of the log, its sets by day and order, and where the next one begins; null: nothing is older. */
export interface SetsPage {
  sets: LoggedSet[];
  end: PageEnd | null;
}

/** At most so many sets after the end of a page before: the newest day first, in it lifter by lifter. */
export async function setsPage(
  db: Kysely<Tables>,
  clubId: string,
  filter: SetFilter,
  { after, most }: { after: PageEnd | null; most: number },
): Promise<SetsPage> {
  let query = logQuery(db, clubId, filter).selectAll('loggedSet');
  if (filter.words?.length) {
    const dates = await datesWith(
      db,
      clubId,
      after ? { ...filter, to: earlier(filter.to, after.doneOn) } : filter,
    );
    query = query.where('loggedSet.doneOn', 'in', dates.slice(0, most));
  }
  if (after !== null) {
    const { doneOn, lifterId, order, id } = after;
    query = query
      .where('loggedSet.doneOn', '<=', doneOn)
      .where(({ or, and, eb }) =>
        or([
          eb('loggedSet.doneOn', '<', doneOn),
          eb('loggedSet.lifterId', '>', lifterId),
          and([
            eb('loggedSet.lifterId', '=', lifterId),
            or([
              eb('loggedSet.order', '>', order),
              and([eb('loggedSet.order', '=', order), eb('loggedSet.id', '>', id)]),
            ]),
          ]),
        ]),
      );
  }
  const rows = await query
    .orderBy('loggedSet.doneOn', 'desc')
    .orderBy('loggedSet.lifterId')
    .orderBy('loggedSet.order')
    .orderBy('loggedSet.id')
    .limit(most + 1)
    .execute();
  const sets = toSets(rows.slice(0, most));
  const { doneOn, lifterId, order, id } = sets.at(-1) ?? {};
  const end = rows.length > most ? ({ doneOn, lifterId, order, id } as PageEnd) : null;
  return { sets: sets.sort(byDayAndOrder), end };
}

/** At most so many days on which such sets were done, before a date, each summed up. */
export async function logDays(
  db: Kysely<Tables>,
  clubId: string,
  filter: SetFilter,
  { before, most }: { before: string | null; most: number },
): Promise<LogDays> {
  let query = logQuery(db, clubId, filter);
  if (filter.words?.length) {
    const dates = (await datesWith(db, clubId, filter)).filter((date) => before === null || date < before);
    query = query.where('loggedSet.doneOn', 'in', dates.slice(0, most + 1));
  }
  if (before !== null) query = query.where('loggedSet.doneOn', '<', before);
  const rows = await query
    .select(({ fn, eb }) => [
      'loggedSet.doneOn',
      fn.count('loggedSet.lifterId').distinct().as('lifters'),
      fn.countAll().as('all'),
      fn.count('loggedSet.struckAt').as('struck'),
      fn
        .count(
          eb
            .case()
            .when(
              sql<boolean>`${sql.ref('loggedSet.struckAt')} is null and ${sql.ref('loggedSet.made')} < ${sql.ref('loggedSet.reps')}`,
            )
            .then(1)
            .end(),
        )
        .as('missed'),
    ])
    .groupBy('loggedSet.doneOn')
    .orderBy('loggedSet.doneOn', 'desc')
    .limit(most + 1)
    .execute();
  const days = rows.slice(0, most).map(({ doneOn, lifters, all, struck, missed }) => ({
    doneOn,
    lifters: Number(lifters),
    sets: Number(all) - Number(struck),
    missed: Number(missed),
    struck: Number(struck),
  }));
  return { days, hasOlder: rows.length > most };
}

function earlier(one: string | undefined, other: string): string {
  return one === undefined || other < one ? other : one;
}
