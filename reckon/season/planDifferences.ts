import type { ClubSeason, LifterOfSeason } from '#contract/season/clubSeason.ts';
import type { DifferenceReason, LifterDifference, WeekDifference } from '#contract/season/planDifferences.ts';
import type { PlannedWeek } from '#contract/season/seasonPlan.ts';
import { daysApart } from './daysApart.ts';
import { differenceReasons, ofClasses, ofEquipment, ofSeason } from './differenceReasons.ts';
import { planOf, type Side } from './Side.ts';

/** How a season as it is worked out now differs from a plan that was taken, lifter by lifter, from a day on. */
export function planDifferences(taken: ClubSeason, now: ClubSeason, from: string): LifterDifference[] {
  const before = new Map(taken.lifters.map((lifter) => [lifter.lifterId, lifter]));
  const stays = new Set(now.lifters.map(({ lifterId }) => lifterId));
  const asked = { from, ofAll: ofSeason(taken, now), daysBetween: daysApart(from) };
  const gone = taken.lifters.filter(({ lifterId }) => !stays.has(lifterId));
  return [
    ...now.lifters.flatMap((lifter) => {
      const was = before.get(lifter.lifterId);
      return was
        ? changed({ season: taken, lifter: was }, { season: now, lifter }, asked)
        : whole(lifter, 'new');
    }),
    ...gone.flatMap((lifter) => whole(lifter, 'gone')),
  ];
}

interface Asked {
  from: string;
  /** Why every lifter's plan differs. */
  ofAll: readonly DifferenceReason[];
  daysBetween: ReturnType<typeof daysApart>;
}

function whole({ lifterId }: LifterOfSeason, what: 'new' | 'gone'): LifterDifference[] {
  return [{ lifterId, what, why: [], weeks: [] }];
}

function changed(before: Side, now: Side, asked: Asked): LifterDifference[] {
  const { from, ofAll } = asked;
  const weeks = weekDifferences(before, now, asked);
  // Other equipment leaves the shares as they are and changes every bar; another class changes none and is told all the same.
  const beside = [...ofEquipment(before, now), ...ofClasses(before, now, from)];
  if (weeks.length === 0 && beside.length === 0) return [];
  const why = [...ofAll, ...differenceReasons(before, now, from)];
  return [{ lifterId: now.lifter.lifterId, what: 'changed', why, weeks }];
}

function weekDifferences(before: Side, now: Side, { from, daysBetween }: Asked): WeekDifference[] {
  const [was, is] = [weeksOf(before), weeksOf(now)];
  const mondays = [...new Set([...was.keys(), ...is.keys()])].toSorted();
  const daysOf = daysBetween(before, now);
  return mondays.flatMap((monday): WeekDifference[] => {
    const [a, b] = [was.get(monday), is.get(monday)];
    const [phaseBefore, phaseNow] = [phaseTitle(before.season, a), phaseTitle(now.season, b)];
    const days = daysOf(a, b);
    const isAhead = monday >= from || (b ?? a)!.days.some(({ date }) => date >= from);
    const phase = phaseBefore === phaseNow || !isAhead ? null : { before: phaseBefore, now: phaseNow };
    return days.length === 0 && phase === null ? [] : [{ monday, phase, days }];
  });
}

function weeksOf(side: Side): Map<string, PlannedWeek> {
  return new Map((planOf(side)?.weeks ?? []).map((week) => [week.monday, week]));
}

function phaseTitle({ method }: ClubSeason, week: PlannedWeek | undefined): string | null {
  return method.phases.find(({ id }) => id === week?.phaseId)?.title ?? null;
}
