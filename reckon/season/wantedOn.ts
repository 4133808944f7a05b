import { mondayOf } from '#contract/calendar/isoWeek.ts';
import type { Day, Group } from '#contract/records/day.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import type { PlannedGroup } from '#contract/season/seasonPlan.ts';
import { canonicalJson } from '#reckon/basis/canonicalJson.ts';
import { groupsFor } from './groupsFor.ts';

/** What a group of a day is to be, before anybody has a rack. */
export interface GroupWanted {
  askedId: string;
  title: string;
  work: Pick<Group, 'title' | 'work' | 'lift' | 'start' | 'aim' | 'blocks' | 'leastChance' | 'bounds'>;
  lifterIds: string[];
}

export interface DayWanted {
  date: string;
  title: string;
  wanted: GroupWanted[];
}

/**
 * The days of a week from today on that a season has, or has had and put on a training day: what each is to hold. Lifters with the same work share a
 * group.
 */
export function wantedOn(
  season: ClubSeason,
  monday: string,
  days: readonly Day[],
  today: string,
): DayWanted[] {
  const found = new Map<string, DayWanted>();
  const dayOn = (date: string, title: string) => {
    const day = found.get(date) ?? { date, title, wanted: [] };
    found.set(date, day);
    return day;
  };
  for (const lifter of season.lifters) {
    const week = lifter.plan === null ? [] : season.plans[lifter.plan]!.weeks;
    for (const planned of week.find((one) => one.monday === monday)?.days ?? []) {
      if (planned.date < today || planned.closed !== null) continue;
      const day = dayOn(planned.date, planned.title);
      for (const group of groupsFor(planned, lifter)) put(day.wanted, group, lifter.lifterId);
    }
  }
  for (const { date, title, groups } of days)
    if (
      date >= today &&
      mondayOf(date) === monday &&
      groups.some(({ planned }) => planned?.seasonId === season.seasonId)
    )
      dayOn(date, title);
  return [...found.values()].toSorted((a, b) => (a.date < b.date ? -1 : 1));
}

function put(wanted: GroupWanted[], planned: PlannedGroup, lifterId: string): void {
  const work = workOf(planned);
  const key = canonicalJson(work);
  const same = wanted.find((one) => one.askedId === planned.askedId && canonicalJson(one.work) === key);
  if (same) same.lifterIds.push(lifterId);
  else wanted.push({ askedId: planned.askedId, title: work.title, work, lifterIds: [lifterId] });
}

function workOf(planned: PlannedGroup): GroupWanted['work'] {
  const { work, lift, start, aim, blocks, leastChance, bounds } = planned;
  return { title: titleOf(planned), work, lift, start, aim, blocks, leastChance, bounds };
}

/** A level of strength is a group of its own, and says so. */
function titleOf({ title, leastTimesBodyMass }: PlannedGroup): string {
  if (leastTimesBodyMass === null) return title;
  return `${title.slice(0, LONGEST_TITLE)}, from ${leastTimesBodyMass} times body mass`;
}

/** Leaves room for the level in the 60 letters that a title may have. */
const LONGEST_TITLE = 30;
