import { mondayOf } from '#contract/calendar/isoWeek.ts';
import type { AskedPlan, ClubSeason, LifterOfSeason } from '#contract/season/clubSeason.ts';
import type { PlannedWeek, SeasonPlan } from '#contract/season/seasonPlan.ts';
import { loadOf } from './planSeason.ts';

/**
 * A season as it is worked out now, with what lies before today as it was taken: a meet that moves does not change what was trained. Whoever was in
 * no plan then has none of the past.
 */
export function keepPast(taken: ClubSeason, now: ClubSeason, today: string, gravity: number): ClubSeason {
  const before = new Map(taken.lifters.map((lifter) => [lifter.lifterId, lifter]));
  const plans: AskedPlan[] = [];
  const known = new Map<string, number>();
  const lifters = now.lifters.map((lifter) => {
    if (lifter.plan === null) return lifter;
    const lifterBefore = before.get(lifter.lifterId);
    const was = lifterBefore?.plan ?? null;
    const key = `${was} ${lifter.plan}`;
    const is = now.plans[lifter.plan]!;
    const plan =
      known.get(key) ?? plans.push(was === null ? is : joined(taken.plans[was]!, is, today, gravity)) - 1;
    known.set(key, plan);
    return { ...lifter, plan, ...boxesOfBoth(lifterBefore?.ownBoxes, lifter.ownBoxes) };
  });
  return { ...now, plans, lifters };
}

/** What is past may ask for depths that nothing ahead asks for any more. */
function boxesOfBoth(
  was: LifterOfSeason['ownBoxes'] = [],
  is: LifterOfSeason['ownBoxes'] = [],
): Pick<LifterOfSeason, 'ownBoxes'> {
  const gone = was.filter(({ aboveParallelM }) => is.every((one) => one.aboveParallelM !== aboveParallelM));
  const ownBoxes = [...is, ...gone];
  return ownBoxes.length === 0 ? {} : { ownBoxes };
}

function joined(taken: AskedPlan, now: AskedPlan, today: string, gravity: number): AskedPlan {
  const monday = mondayOf(today);
  const past = taken.weeks.filter((week) => week.monday < monday).map((week) => inMeetsOf(week, taken, now));
  const begun = taken.weeks.find((week) => week.monday === monday);
  const ahead = now.weeks
    .filter((week) => week.monday >= monday)
    .map((week) => (begun && week.monday === monday ? halfway(begun, week, today, gravity) : week));
  return { ...now, weeks: [...past, ...ahead] };
}

/** A week of which some days are past. */
function halfway(taken: PlannedWeek, now: PlannedWeek, today: string, gravity: number): PlannedWeek {
  const days = [
    ...taken.days.filter(({ date }) => date < today),
    ...now.days.filter(({ date }) => date >= today),
  ];
  return { ...now, days, load: loadOf(days, gravity) };
}

/** The week with its meets by their place among those of the plan that it comes into. */
function inMeetsOf(
  week: PlannedWeek,
  { meets: before }: Pick<SeasonPlan, 'meets'>,
  { meets: now }: Pick<SeasonPlan, 'meets'>,
): PlannedWeek {
  const meets = week.meets.flatMap((at) => {
    const place = now.findIndex(
      ({ title, date }) => title === before[at]!.title && date === before[at]!.date,
    );
    return place < 0 ? [] : [place];
  });
  return { ...week, meets };
}
