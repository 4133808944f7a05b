import { type Kysely, sql } from 'kysely';
import type { Lift } from '#contract/records/lift.ts';
import type { Tables } from './schema.ts';

/**
 * A short mark of a lifter's log in each lift that it knows, the same as long as no set was added, struck or restored.
 * A set never changes otherwise but with the whole club; the sums tell one club's sets from another's.
 */
export async function logMarks(
  db: Kysely<Tables>,
  clubId: string,
  lifterId: string,
): Promise<Map<Lift, string>> {
  const { rows } = await sql<{ lift: Lift; mark: string }>`
    select "lift",
      count(*) || ' ' || count("struckAt") || ' ' || max("loggedAt") || ' ' || ifnull(max("struckAt"), '') || ' ' ||
      sum("order") || ' ' || sum("reps") || ' ' || sum("made") || ' ' || total(length("setup")) || ' ' ||
      total("setup" ->> '$.barKg') || ' ' || total("bodyMassKg") || ' ' || total("repsInReserve") as "mark"
    from "loggedSet" where "clubId" = ${clubId} and "lifterId" = ${lifterId} group by "lift"`.execute(db);
  return new Map(rows.map(({ lift, mark }) => [lift, mark]));
}
