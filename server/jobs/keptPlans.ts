import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { PlanByLog } from './daySolver.ts';
import { newestKept } from './newestKept.ts';

type PlanOfNumber = (number: number, ...asked: Parameters<PlanByLog>) => ReturnType<PlanByLog>;

interface Told {
  number: number;
  estimates: readonly StrengthEstimate[];
  document: DayPlan | null;
}

/** More days are hardly looked at on one evening. */
const keptCount = 20;

/**
 * Tells a plan of this number by the log, worked out again only when an estimate has come or changed: every screen that waits
 * for estimates asks each second, and a day that somebody wants solved must not queue behind the same answer.
 */
export function keptPlans(planByLog: PlanByLog): PlanOfNumber {
  const newest = newestKept<Told>(keptCount);
  return async (number, records, day, plan, estimates) => {
    const told = newest.get(day.id);
    if (told?.number === number && areSame(told.estimates, estimates)) return told.document;
    const document = await planByLog(records, day, plan, estimates);
    newest.set(day.id, { number, estimates, document });
    return document;
  };
}

/** An estimate that has not changed is the same object. */
function areSame(some: readonly StrengthEstimate[], others: readonly StrengthEstimate[]): boolean {
  return some.length === others.length && some.every((estimate, i) => estimate === others[i]);
}
