import type { Kysely } from 'kysely';
import type { Lift } from '#contract/records/lift.ts';
import type { Tables } from './schema.ts';

/** What tells one state of a lifter's log of a lift from another, as long as no other club is put in the place of all. */
export interface LogMark {
  /** The same as long as no set was added, struck or restored. */
  mark: string;
  /** The same as long as none was struck or restored; sets may have been added. */
  strikes: string;
  /** How many there are, struck ones too. */
  sets: number;
}

/** Of a lift of which no set was logged. */
export const emptyLog: LogMark = { mark: '', strikes: '0 ', sets: 0 };

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
      const mark = [sets, strikes, lastLoggedAt].join(' ');
      return [lift, { mark, strikes, sets: Number(sets) }];
    }),
  );
}
