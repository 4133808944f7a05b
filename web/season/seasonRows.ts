import { dayNumber } from '#contract/calendar/dayNumber.ts';
import { mondayOf } from '#contract/calendar/isoWeek.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { Restriction } from '#contract/records/lifters.ts';
import type { PlannedWeek } from '#contract/season/seasonPlan.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import type { MeetPost } from '#web/charts/SeasonHead.tsx';
import type { SeasonRowScene, SeasonWeek } from '#web/charts/SeasonScene.ts';
import type { LifterSeason, SeasonView } from './SeasonView.ts';
import { type WeekShares, weekShares } from './weekShares.ts';

/** The season as its picture has it. */
export interface SeasonScene {
  mondays: readonly string[];
  rows: readonly SeasonRowScene[];
  meets: readonly MeetPost[];
  todayAt: number | null;
}

/**
 * `lift` null: all lifts together. Lifters with the same plan have their weeks worked out once. Where nothing is planned for anybody, since all
 * meets are left out, it is the week of today alone.
 */
export function seasonScene({ method, lifters, today }: SeasonView, lift: Lift | null): SeasonScene {
  const planned = new Set(lifters.flatMap(({ plan }) => plan.weeks.map(({ monday }) => monday)));
  if (planned.size === 0) planned.add(mondayOf(today));
  const mondays = [...planned].sort();
  const first = mondays[0]!;
  const at = (date: string) => (dayNumber(date) - dayNumber(first) + 0.5) / 7;
  const patternOf = new Map(method.phases.map(({ id }, place) => [id, place]));
  const sharesOf = new Map<PlannedWeek, WeekShares>();
  const shares = (week: PlannedWeek) => {
    const known = sharesOf.get(week) ?? weekShares(week, lift);
    sharesOf.set(week, known);
    return known;
  };
  const rows = lifters.map(
    (one): SeasonRowScene => ({
      key: one.lifter.id,
      name: one.lifter.name,
      weeks: weeksOf(one, { lift, shares, patternOf, count: mondays.length, first }),
      meetsAt: one.plan.meets.map(({ date }) => at(date)),
    }),
  );
  const todayAt = at(today);
  return {
    mondays,
    rows,
    meets: meetPosts(lifters, at),
    todayAt: todayAt >= 0 && todayAt <= mondays.length ? todayAt : null,
  };
}

function weeksOf(
  { plan, restrictions, byHandOn }: LifterSeason,
  given: {
    lift: Lift | null;
    shares: (week: PlannedWeek) => WeekShares;
    patternOf: ReadonlyMap<string, number>;
    count: number;
    first: string;
  },
): SeasonWeek[] {
  const weeks = new Map(plan.weeks.map((week) => [week.monday, week]));
  return Array.from({ length: given.count }, (_, at): SeasonWeek => {
    const monday = daysLater(given.first, 7 * at);
    const week = weeks.get(monday);
    if (week === undefined) return noWeek;
    const { lockoutShare, bandShare, peakShare } = given.shares(week);
    return {
      pattern: week.phaseId === null ? null : (given.patternOf.get(week.phaseId) ?? null),
      isNewPhase: week.weekOfPhase === 1,
      isNewWave: week.weekOfWave === 1,
      barShare: lockoutShare === null ? null : lockoutShare - (bandShare ?? 0),
      bandShare,
      peakShare,
      away: awayOf(week),
      isRestricted: restrictions.some((one) => holdsIn(one, monday, given.lift)),
      isByHand: byHandOn.some((date) => date >= monday && date <= daysLater(monday, 6)),
    };
  });
}

const noWeek: SeasonWeek = {
  pattern: null,
  isNewPhase: false,
  isNewWave: false,
  barShare: null,
  bandShare: null,
  peakShare: null,
  away: null,
  isRestricted: false,
  isByHand: false,
};

export function awayOf({ days }: Pick<PlannedWeek, 'days'>): SeasonWeek['away'] {
  const closed = days.filter((day) => day.closed !== null).length;
  return closed === 0 ? null : closed === days.length ? 'all' : 'some';
}

/** Whether a restriction holds on any day of the week, for that lift; null: for any. */
export function holdsIn(one: Restriction, monday: string, lift: Lift | null): boolean {
  if (lift !== null && one.lift !== lift) return false;
  return one.fromOn <= daysLater(monday, 6) && (one.untilOn === null || one.untilOn >= monday);
}

/** Each meet of anybody once. */
function meetPosts(lifters: readonly LifterSeason[], at: (date: string) => number): MeetPost[] {
  const posts = new Map<string, MeetPost>();
  for (const { plan } of lifters)
    for (const { title, date } of plan.meets) posts.set(`${date} ${title}`, { title, at: at(date) });
  return [...posts.values()];
}
