import { type Kysely, sql } from 'kysely';
import type { Lift } from '#contract/records/lift.ts';
import type { Tables } from './schema.ts';

/** What tells one state of a lifter's log of a lift from another. */
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
 * A short mark of a lifter's log in each lift that it knows. A set never changes otherwise but with the whole club; the
 * sums tell one club's sets from another's.
 */
export async function logMarks(
  db: Kysely<Tables>,
  clubId: string,
  lifterId: string,
): Promise<Map<Lift, LogMark>> {
  const { rows } = await sql<LogMark & { lift: Lift }>`
    select "lift", count(*) as "sets", count("struckAt") || ' ' || ifnull(max("struckAt"), '') as "strikes",
      count(*) || ' ' || count("struckAt") || ' ' || max("loggedAt") || ' ' || ifnull(max("struckAt"), '') || ' ' ||
      sum("order") || ' ' || sum("reps") || ' ' || sum("made") || ' ' || total(length("setup")) || ' ' ||
      total("setup" ->> '$.barKg') || ' ' || total("bodyMassKg") || ' ' || total("repsInReserve") as "mark"
    from "loggedSet" where "clubId" = ${clubId} and "lifterId" = ${lifterId} group by "lift"`.execute(db);
  return new Map(rows.map(({ lift, ...mark }) => [lift, mark]));
}
