import type { CapabilityRecords } from '#contract/assemble/assembleCapability.ts';
import { drawsIn } from '#contract/assemble/estimatedCapability.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { sdOfBelief } from '#core/strength/belief.ts';
import { CAPACITY_SHARES, capacityCourse } from '#core/strength/capacityCourse.ts';
import type { CapacityReport } from './capacityReport.ts';
import { dateOfDay } from './dayNumber.ts';
import { evidenceOf } from './evidenceOf.ts';
import { competitionSetup, riggingOf } from './riggingOf.ts';

/** Work capacity over the season in one lift, beside the estimate by the whole log; without a stretch where no set told of it. */
export function liftCapacity(
  records: CapabilityRecords,
  log: readonly LoggedSet[],
  estimate: Pick<StrengthEstimate, 'lifterId' | 'lift' | 'on' | 'bodyMassKg' | 'parameters' | 'draws'>,
): CapacityReport {
  const { lifterId, lift, on, bodyMassKg, parameters } = estimate;
  const before = parameters.find(({ name }) => name === 'lnTiring')?.before;
  if (before === undefined) return { lifterId, lift, stretches: [], better: null, change: 'cannotTell' };
  const course = capacityCourse({
    lift,
    reference: riggingOf(records, lifterId, lift, competitionSetup(lift), on),
    bodyMassKg,
    movedBodyKg: populationShape(lift).movedBodyShare * bodyMassKg,
    sets: evidenceOf(records, log, lifterId, lift, on).sets,
    whole: drawsIn(estimate),
    before: { mean: before.median, sd: sdOfBelief(before) },
  });
  return {
    lifterId,
    lift,
    stretches: course.stretches.map(({ fromDay, toDay, setsThatTell, told }) => ({
      from: dateOfDay(fromDay),
      to: dateOfDay(toDay),
      setsThatTell,
      told: told && {
        lnTiring: told.lnTiring,
        reps: told.reps.map((belief, i) => ({ share: CAPACITY_SHARES[i]!, belief })),
      },
    })),
    better: course.better,
    change: course.change,
  };
}
