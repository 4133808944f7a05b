import type { AskedPlan, LifterOfSeason } from '#contract/season/clubSeason.ts';
import type { PlannedGroup } from '#contract/season/seasonPlan.ts';
import { groupsFor } from '#reckon/season/groupsFor.ts';

/**
 * Gives each lifter the plan with the groups of the own level of strength alone. Lifters of the same level share one, as they share the plan that it comes
 * from, so that a week is worked out and drawn once for all of them.
 */
export function planFor(plans: readonly AskedPlan[]) {
  const known = new Map<string, AskedPlan>();
  const levels = plans.map(levelsOf);
  return (at: number, lifter: Pick<LifterOfSeason, 'timesBodyMass'>): AskedPlan => {
    const reached = levels[at]!.filter(
      ({ lift, leastTimesBodyMass }) => leastTimesBodyMass! <= (lifter.timesBodyMass[lift] ?? 0),
    );
    const key = JSON.stringify([at, reached]);
    const plan = known.get(key) ?? (levels[at]!.length === 0 ? plans[at]! : ofLevel(plans[at]!, lifter));
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

function ofLevel(plan: AskedPlan, lifter: Pick<LifterOfSeason, 'timesBodyMass'>): AskedPlan {
  return {
    ...plan,
    weeks: plan.weeks.map((week) => ({
      ...week,
      days: week.days.map((day) => ({ ...day, groups: groupsFor(day, lifter) })),
    })),
  };
}
