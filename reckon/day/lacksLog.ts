import type { PlanPlace } from '#contract/day/dayPlan.ts';

/** Whether a lifter was prescribed for by a best or by body mass alone. */
export function lacksLog({ solved }: PlanPlace): boolean {
  return solved !== null && solved.strength.setCount === null;
}
