import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LifterOfSeason } from '#contract/season/clubSeason.ts';
import { referenceMaximum } from '#reckon/day/referenceMaximum.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import { bestToGoBy } from '#reckon/lifter/assembleCapability.ts';
import { lastWeighing } from '#reckon/lifter/lastWeighing.ts';

/** How many body masses a lifter's reference maximum is in each lift, by bests and weighings up to a day. */
export function timesBodyMassOf(
  records: ClubRecords,
  lifterId: string,
  on: string,
): LifterOfSeason['timesBodyMass'] {
  const weighed = lastWeighing(records, lifterId, on);
  const times = (lift: Lift) => {
    // Without a best the model has only most lifters to go by.
    if (weighed === null || bestToGoBy(records, lifterId, lift, on) === null) return null;
    const kg = assembledOrNull(() => referenceMaximum(records, lifterId, lift, on).kg);
    return kg === null ? null : kg / weighed.massKg;
  };
  return { squat: times('squat'), bench: times('bench'), deadlift: times('deadlift') };
}
