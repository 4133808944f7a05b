import type { PlanPlace } from '#contract/day/dayPlan.ts';
import { addedWork, type SessionWork } from '#contract/season/sessionWork.ts';

/**
 * What the sets of a place that was worked out come to, bands counted as they truly pull: the mean load over the way, times the way, for each rep. The time is the
 * model's own for this lifter, tired as the sets make.
 */
export function workOfPlace({ heights, blocks }: NonNullable<PlanPlace['solved']>): SessionWork {
  const wayM = heights.lockoutM - heights.bottomM;
  return addedWork(
    blocks.map(({ sets, reps, barKg, explanation, effort }) => ({
      liftedKg: sets * reps * barKg,
      workJ: sets * reps * explanation.mean.totalN * wayM,
      underBarS: effort && sets * effort.underStrainS,
    })),
  );
}
