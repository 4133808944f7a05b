import type { AskedPlan } from '#contract/season/clubSeason.ts';
import type { PlannedGroup, WeekOfLifter } from '#contract/season/seasonPlan.ts';
import { groupsFor, type WhoseGroups } from '#reckon/season/groupsFor.ts';

/** A plan with the groups of one lifter alone. */
export type PlanOfLifter = Omit<AskedPlan, 'weeks'> & { weeks: WeekOfLifter[] };

/**
 * Gives each lifter the plan with the groups of the own level of strength alone, from the own box. Lifters of the same level and boxes share one, as they
 * share the plan that it comes from, so that a week is worked out and drawn once for all of them.
 */
export function planFor(plans: readonly AskedPlan[]) {
  const known = new Map<string, PlanOfLifter>();
  const levels = plans.map(levelsOf);
  return (at: number, lifter: WhoseGroups): PlanOfLifter => {
    const reached = levels[at]!.filter(
      ({ lift, leastTimesBodyMass }) => leastTimesBodyMass! <= (lifter.timesBodyMass[lift] ?? 0),
    );
    const key = JSON.stringify([at, reached, lifter.ownBoxes]);
    const plan = known.get(key) ?? planOfLifter(plans[at]!, lifter);
    known.set(key, plan);
    return plan;
  };
}

type Level = Pick<PlannedGroup, 'lift' | 'leastTimesBodyMass'>;

function levelsOf({ weeks }: AskedPlan): Level[] {
  const found = new Map<string, Level>();
  for (const { days } of weeks)
    for (const { groups } of days)
      for (const { lift, leastTimesBodyMass } of groups)
        if (leastTimesBodyMass !== null)
          found.set(`${lift} ${leastTimesBodyMass}`, { lift, leastTimesBodyMass });
  return [...found.values()];
}

function planOfLifter(plan: AskedPlan, lifter: WhoseGroups): PlanOfLifter {
  return {
    ...plan,
    weeks: plan.weeks.map((week) => ({
      ...week,
      days: week.days.map((day) => ({ ...day, groups: groupsFor(day, lifter) })),
    })),
  };
}
