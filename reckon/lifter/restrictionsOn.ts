import type { ClubRecords } from '#contract/records/allKinds.ts';
import { holdsOn } from '#contract/records/holdsOn.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { Restriction } from '#contract/records/lifters.ts';

/** What a lifter is held to in a lift on a day. */
export function restrictionsOn(
  records: Pick<ClubRecords, 'restriction'>,
  lifterId: string,
  lift: Lift,
  on: string,
): Restriction[] {
  return records.restriction.filter(
    (one) => one.lifterId === lifterId && one.lift === lift && holdsOn(one, on),
  );
}
