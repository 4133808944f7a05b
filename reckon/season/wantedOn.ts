import { mondayOf } from '#contract/calendar/isoWeek.ts';
import type { Day, Group } from '#contract/records/day.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import type { GroupOfLifter } from '#contract/season/seasonPlan.ts';
import { canonicalJson } from '#reckon/basis/canonicalJson.ts';
import { groupsFor } from './groupsFor.ts';

/** What a group of a day is to be, before anybody has a rack. */
export interface GroupWanted {
  askedId: string;
  title: string;
  work: Pick<Group, 'title' | 'work' | 'lift' | 'start' | 'aim' | 'blocks' | 'leastChance' | 'bounds'>;
  lifterIds: string[];
  /** Who sits on which box, where each has their own; the start of the group is that of most of them. */
  boxes: LifterBox[] | undefined;
}

export type LifterBox = NonNullable<NonNullable<Group['planned']>['boxes']>[number];

export interface DayWanted {
  date: string;
  title: string;
  wanted: GroupWanted[];
}

/**
 * The days of a week from today on that a season has, or has had and put on a training day: what each is to hold. Lifters with the same work share a
 * group, each on their own box where the plan asks for that.
 */
export function wantedOn(
  season: ClubSeason,
  monday: string,
  days: readonly Day[],
  today: string,
): DayWanted[] {
  const found = new Map<string, { title: string; groups: Map<string, GroupOfLifters> }>();
  const dayOn = (date: string, title: string) => {
    const day = found.get(date) ?? { title, groups: new Map<string, GroupOfLifters>() };
    found.set(date, day);
    return day;
  };
  for (const lifter of season.lifters) {
    const week = lifter.plan === null ? [] : season.plans[lifter.plan]!.weeks;
    for (const planned of week.find((one) => one.monday === monday)?.days ?? []) {
      if (planned.date < today || planned.closed !== null) continue;
      const { groups } = dayOn(planned.date, planned.title);
      for (const group of groupsFor(planned, lifter)) {
        const key = keyOf(group);
        const same = groups.get(key) ?? { group, lifters: [] };
        groups.set(key, same);
        same.lifters.push({ lifterId: lifter.lifterId, group });
      }
    }
  }
  for (const { date, title, groups } of days)
    if (
      date >= today &&
      mondayOf(date) === monday &&
      groups.some(({ planned }) => planned?.seasonId === season.seasonId)
    )
      dayOn(date, title);
  return [...found]
    .map(([date, { title, groups }]) => ({ date, title, wanted: [...groups.values()].map(wantedOf) }))
    .toSorted((a, b) => (a.date < b.date ? -1 : 1));
}

interface GroupOfLifters {
  group: GroupOfLifter;
  lifters: { lifterId: string; group: GroupOfLifter }[];
}

/** Lifters at one depth are one group, whatever their boxes. */
function keyOf(planned: GroupOfLifter): string {
  const start = planned.ownBox ? { aboveParallelM: planned.ownBox.aboveParallelM } : planned.start;
  return canonicalJson({ ...workOf(planned), askedId: planned.askedId, start });
}

function wantedOf({ group, lifters }: GroupOfLifters): GroupWanted {
  const boxes = lifters.flatMap(({ lifterId, group: { ownBox } }) =>
    ownBox ? [{ lifterId, heightM: ownBox.heightM }] : [],
  );
  const work = workOf(group);
  const isOwn = boxes.length > 0;
  return {
    askedId: group.askedId,
    title: work.title,
    work: isOwn ? { ...work, start: { way: 'box', heightM: mostCommon(boxes) } } : work,
    lifterIds: lifters.map(({ lifterId }) => lifterId),
    boxes: isOwn ? boxes : undefined,
  };
}

/** The height that most sit on, of several the lowest. */
function mostCommon(boxes: readonly LifterBox[]): number {
  const count = (heightM: number) => boxes.filter((one) => one.heightM === heightM).length;
  const heights = boxes.map(({ heightM }) => heightM).toSorted((a, b) => a - b);
  return heights.reduce((most, heightM) => (count(heightM) > count(most) ? heightM : most));
}

function workOf(planned: GroupOfLifter): GroupWanted['work'] {
  const { work, lift, start, aim, blocks, leastChance, bounds } = planned;
  return { title: titleOf(planned), work, lift, start, aim, blocks, leastChance, bounds };
}

/** A level of strength is a group of its own, and says so. */
function titleOf({ title, leastTimesBodyMass }: GroupOfLifter): string {
  if (leastTimesBodyMass === null) return title;
  return `${title.slice(0, LONGEST_TITLE)}, from ${leastTimesBodyMass} times body mass`;
}

/** Leaves room for the level in the 60 letters that a title may have. */
const LONGEST_TITLE = 30;
