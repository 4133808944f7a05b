import type { DayPlan } from '#contract/day/dayPlan.ts';
import { lacksLog } from './lacksLog.ts';

/** Ids of the lifters who go by the log in `told`, and in the plan that it tells anew by a best or body mass alone. */
export function toldAnew(plan: Pick<DayPlan, 'groups'>, told: Pick<DayPlan, 'groups'>): string[] {
  const lacking = ({ groups }: Pick<DayPlan, 'groups'>) =>
    groups.map(({ places }) => places.filter(lacksLog).map(({ lifterId }) => lifterId));
  const still = lacking(told);
  return [...new Set(lacking(plan).flatMap((ids, group) => ids.filter((id) => !still[group]?.includes(id))))];
}
