import type { Kysely } from 'kysely';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Tables } from './schema.ts';

/** What tells one state of a lifter's log of a lift from another, as long as no other club is put in the place of all. */
export interface LogMark {
  /** The same as long as no set was added, struck or restored. */
  mark: string;
  /** The same as long as none was struck or restored; sets may have been added. */
  strikes: string;
  /** How many there are, struck ones too. */
  sets: number;
  /** When the last of them was logged. */
  lastLoggedAt: string;
}

/** Of a lift of which no set was logged. */
export const emptyLog: LogMark = { mark: '', strikes: '0 ', sets: 0, lastLoggedAt: '' };

/**
 * A short mark of a lifter's log in each lift that it knows. A set never changes otherwise but with the whole club, which `lastReplaced`
 * tells.
 */
export async function logMarks(
  db: Kysely<Tables>,
  clubId: string,
  lifterId: string,
): Promise<Map<Lift, LogMark>> {
  const rows = await db
    .selectFrom('loggedSet')
    .select((eb) => [
      'lift',
      eb.fn.countAll().as('sets'),
      eb.fn.count('struckAt').as('struck'),
      eb.fn.max('struckAt').as('lastStruckAt'),
      eb.fn.max('loggedAt').as('lastLoggedAt'),
    ])
    .where('clubId', '=', clubId)
    .where('lifterId', '=', lifterId)
    .groupBy('lift')
    .execute();
  return new Map(
    rows.map(({ lift, sets, struck, lastStruckAt, lastLoggedAt }) => {
      const strikes = `${struck} ${lastStruckAt ?? ''}`;
      return [lift, markOf({ strikes, sets: Number(sets), lastLoggedAt })];
    }),
  );
}

/**
 * The marks of a lifter's log from those before and the sets of that lifter that were touched since; null where only the log tells. Whatever
 * is later than all that is marked was added since, and nothing else happened to it unless it is struck.
 */
export function marksWith(
  before: ReadonlyMap<Lift, LogMark>,
  touched: readonly LoggedSet[],
): Map<Lift, LogMark> | null {
  const of = (lift: Lift) => before.get(lift) ?? emptyLog;
  if (touched.some(({ lift, loggedAt, struckAt }) => struckAt !== null || loggedAt <= of(lift).lastLoggedAt))
    return null;
  const after = new Map(before);
  for (const lift of new Set(touched.map((set) => set.lift))) {
    const times = touched.filter((set) => set.lift === lift).map(({ loggedAt }) => loggedAt);
    const { strikes, sets } = of(lift);
    after.set(lift, markOf({ strikes, sets: sets + times.length, lastLoggedAt: times.sort().at(-1)! }));
  }
  return after;
}

function markOf(log: Omit<LogMark, 'mark'>): LogMark {
  return { ...log, mark: [log.sets, log.strikes, log.lastLoggedAt].join(' ') };
}
