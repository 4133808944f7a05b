import type { AskedPlan } from '#contract/season/clubSeason.ts';
import type { PlannedGroup, PlannedWeek, WeekOfLifter } from '#contract/season/seasonPlan.ts';
import { groupsFor, reaches, type WhoseGroups } from '#reckon/season/groupsFor.ts';

/** A plan with the groups of one lifter alone. */
export type PlanOfLifter = Omit<AskedPlan, 'weeks'> & { weeks: WeekOfLifter[] };

/**
 * Gives each lifter the plan with the groups of the own level of strength alone, from the own box. Lifters of the same level and boxes share one, as they
 * share the plan that it comes from, and plans share weeks, so that a week is worked out and drawn once for all of them.
 */
export function planFor(plans: readonly AskedPlan[]) {
  const known = new Map<string, PlanOfLifter>();
  const weeksKnown = new Map<string, WeeksKnown>();
  const levels = plans.map(levelsOf);
  return (at: number, lifter: WhoseGroups): PlanOfLifter => {
    const reached = levels[at]!.filter((level) => reaches(lifter.timesBodyMass, level));
    const alike = JSON.stringify([reached, lifter.ownBoxes]);
    const key = `${at} ${alike}`;
    const weeks: WeeksKnown = weeksKnown.get(alike) ?? new Map();
    weeksKnown.set(alike, weeks);
    const plan = known.get(key) ?? planOfLifter(plans[at]!, lifter, weeks);
    known.set(key, plan);
    return plan;
  };
}

/** Weeks that were already made for somebody alike, in whosever plan. */
type WeeksKnown = Map<PlannedWeek, WeekOfLifter>;

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

function planOfLifter(plan: AskedPlan, lifter: WhoseGroups, known: WeeksKnown): PlanOfLifter {
  const weekFor = (week: PlannedWeek): WeekOfLifter => {
    const made = known.get(week) ?? {
      ...week,
      days: week.days.map((day) => ({ ...day, groups: groupsFor(day, lifter) })),
    };
    known.set(week, made);
    return made;
  };
  return { ...plan, weeks: plan.weeks.map(weekFor) };
}
