import { dateOfDay } from '#contract/calendar/dayNumber.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { CapacityReport } from '#contract/strength/capacityReport.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { sdOfBelief } from '#core/strength/belief.ts';
import { CAPACITY_SHARES, capacityCourse } from '#core/strength/capacityCourse.ts';
import { type ParameterName, type Prior, populationPrior } from '#core/strength/parameters.ts';
import type { CapabilityRecords } from '#reckon/lifter/assembleCapability.ts';
import { drawsIn } from './estimatedCapability.ts';
import { evidenceOf } from './evidenceOf.ts';
import { competitionSetup, riggingOf } from './riggingOf.ts';

/** Work capacity over the season in one lift, beside the estimate by the whole log; without a stretch where no set told of it. */
export function liftCapacity(
  records: CapabilityRecords,
  log: readonly LoggedSet[],
  estimate: Pick<StrengthEstimate, 'lifterId' | 'lift' | 'on' | 'bodyMassKg' | 'parameters' | 'draws'>,
): CapacityReport {
  const { lifterId, lift, on, bodyMassKg, parameters } = estimate;
  if (!parameters.some(({ name }) => name === 'lnTiring'))
    return { lifterId, lift, stretches: [], better: null, change: 'cannotTell' };
  const course = capacityCourse({
    lift,
    reference: riggingOf(records, lifterId, lift, competitionSetup(lift), on),
    bodyMassKg,
    movedBodyKg: populationShape(lift).movedBodyShare * bodyMassKg,
    sets: evidenceOf(records, log, lifterId, lift, on).sets,
    whole: drawsIn(estimate),
    prior: priorOf(estimate),
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

/** What was believed before any set: told for every parameter of which a set could tell anything. */
function priorOf({ lift, parameters }: Pick<StrengthEstimate, 'lift' | 'parameters'>): Prior {
  const { mean, sd } = populationPrior(lift);
  for (const { name, before } of parameters) {
    mean[name as ParameterName] = before.median;
    sd[name as ParameterName] = sdOfBelief(before);
  }
  return { mean, sd };
}
