import type { DayPlan } from '#contract/day/dayPlan.ts';
import { reworded, type SinceThen } from '#contract/paper/sinceThen.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';
import { wordsNow } from './wordsOf.ts';

/** Which words of a plan are others now; none of a plan of before they were kept. */
export function wordsSince(plan: DayPlan, records: ClubRecords, day: Day | undefined): SinceThen[] {
  if (plan.words === null || day === undefined) return [];
  return reworded(plan, plan.words, wordsNow(records, day, plan.groups), day);
}
