import { freshPlace } from '#contract/day/freshPlace.ts';
import { isSameStart } from '#contract/day/isSameStart.ts';
import { lastTime, rackFor } from '#contract/day/rackFor.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type Day, type Group, group as groupShape, type Place } from '#contract/records/day.ts';
import type { Start } from '#contract/records/lift.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import type { WeekTaking } from '#contract/season/weekTaking.ts';
import { fingerprint } from '#reckon/basis/fingerprint.ts';
import { type GroupWanted, wantedOn } from './wantedOn.ts';

/** What stands beside a plan when a week of it is taken. */
export interface TakingBeside {
  records: Pick<ClubRecords, 'day' | 'rack'>;
  /** Days before it stay as they are. */
  today: string;
  /** The days of which sets are logged. */
  logged: ReadonlySet<string>;
  newId: () => string;
}

/**
 * The training days of a week as a season's plan has them: ordinary days with groups, lifters and racks, new or as they become, and what was done to
 * each. A day with logged sets, and a group that the coach has changed since it came from the plan, stay as they are and are named.
 */
export function weekIntoDays(
  season: ClubSeason,
  monday: string,
  { records, today, logged, newId }: TakingBeside,
): { days: Day[]; taking: WeekTaking } {
  const taking: WeekTaking = { monday, days: [], left: [] };
  const days: Day[] = [];
  for (const { date, title, wanted } of wantedOn(season, monday, records.day, today)) {
    const found = dayToFill(records.day, season.seasonId, date, logged);
    if (found === 'logged') {
      taking.left.push({ date, group: null, why: 'logged' });
      continue;
    }
    if (found === null && wanted.length === 0) continue;
    const before = found ?? dayWithout(newId(), date, title);
    const { groups, done, left } = filled(season, before, wanted, records);
    taking.left.push(...left.map((one) => ({ date, ...one })));
    taking.days.push({ date, dayId: found && before.id, title: before.title, groups: done });
    if (done.some(({ what }) => what !== 'same')) days.push({ ...before, groups });
  }
  return { days, taking };
}

/** A training day on which nothing is done yet. */
export function dayWithout(id: string, date: string, title: string): Day {
  return { id, date, title, groups: [], oneSetPull: 0.5, note: '' };
}

/** The day that a season's groups go to: where they are already, else the first of that date without a set; null: a new one. */
function dayToFill(
  days: readonly Day[],
  seasonId: string,
  date: string,
  logged: ReadonlySet<string>,
): Day | 'logged' | null {
  const ofDate = days.filter((day) => day.date === date);
  const own = ofDate.find(({ groups }) => groups.some(({ planned }) => planned?.seasonId === seasonId));
  if (own) return logged.has(own.id) ? 'logged' : own;
  return ofDate.find(({ id }) => !logged.has(id)) ?? null;
}

type Done = WeekTaking['days'][number]['groups'];
type Left = Omit<WeekTaking['left'][number], 'date'>[];

/** The groups of a day with those that are wanted in it: its own of this season changed in place, new ones at its end. */
function filled(
  { seasonId }: ClubSeason,
  day: Day,
  wanted: readonly GroupWanted[],
  records: TakingBeside['records'],
): { groups: Group[]; done: Done; left: Left } {
  const done: Done = [];
  const left: Left = [];
  const open = [...wanted];
  const groups = day.groups.flatMap((group): Group[] => {
    if (group.planned?.seasonId !== seasonId) return [group];
    const at = bestFit(open, group);
    const [next] = at < 0 ? [] : open.splice(at, 1);
    const isEdited = group.planned.mark !== markOf(group, day.date);
    const lifterIds = next?.lifterIds ?? lifterIdsOf(group);
    if (isEdited) {
      // What the plan would say anyway needs no word.
      if (!next || !isAsWanted(group, next)) left.push({ group: group.title, why: 'edited' });
      return [group];
    }
    if (!next) {
      done.push({ title: group.title, lifterIds, what: 'gone' });
      return [];
    }
    if (isAsWanted(group, next)) {
      done.push({ title: group.title, lifterIds, what: 'same' });
      return [group];
    }
    const made = madeOf(next, group, seasonId, day, records);
    if (made === null) {
      left.push({ group: next.title, why: 'noRack' });
      return [group];
    }
    done.push({ title: made.title, lifterIds, what: 'changed' });
    return [made];
  });
  for (const next of open) {
    if (groups.length >= MOST_GROUPS) {
      left.push({ group: next.title, why: 'full' });
      continue;
    }
    const made = madeOf(next, freshGroup(next, groups), seasonId, day, records);
    if (made === null) {
      left.push({ group: next.title, why: 'noRack' });
      continue;
    }
    groups.push(made);
    done.push({ title: made.title, lifterIds: next.lifterIds, what: 'new' });
  }
  return { groups, done, left };
}

/** As many groups as a day takes. */
const MOST_GROUPS = 8;

/** Of the wanted groups that the same of the method asks for, the one with the most of these lifters. */
function bestFit(wanted: readonly GroupWanted[], group: Group): number {
  const shared = ({ lifterIds }: GroupWanted) =>
    lifterIdsOf(group).filter((id) => lifterIds.includes(id)).length;
  return wanted.reduce((best, next, at) => {
    if (next.askedId !== group.planned?.askedId) return best;
    return best < 0 || shared(next) > shared(wanted[best]!) ? at : best;
  }, -1);
}

/** A group as it stood on the day, or a new one of which nothing but its name is known. */
type GroupBefore = Pick<Group, 'id' | 'places' | 'away'> & Partial<Pick<Group, 'start' | 'planned'>>;

function freshGroup({ askedId }: GroupWanted, groups: readonly Group[]): GroupBefore {
  const taken = new Set(groups.map(({ id }) => id));
  let id = askedId;
  for (let next = 2; taken.has(id); next += 1) id = `${askedId}-${next}`;
  return { id, places: [], away: [] };
}

/** The group as it is wanted; who was in it keeps place and rack. Null: no rack takes the lift. */
function madeOf(
  { askedId, lifterIds, work, boxes }: GroupWanted,
  before: GroupBefore,
  seasonId: string,
  day: Day,
  { day: days, rack }: TakingBeside['records'],
): Group | null {
  const stays = ({ lifterId }: { lifterId: string }) => lifterIds.includes(lifterId);
  const seated = (place: Place) => ({ ...place, start: startIn(place, before, work.start, boxes) });
  const away = before.away.filter(stays).map(seated);
  const racks = rack.filter(({ lifts }) => lifts.includes(work.lift)).map(({ id }) => id);
  let made: Group = { ...work, id: before.id, places: before.places.filter(stays).map(seated), away };
  const last = lastTime(days, day, made);
  for (const lifterId of lifterIds) {
    if ([...made.places, ...made.away].some((place) => place.lifterId === lifterId)) continue;
    const rackId = rackFor(made, lifterId, racks, last?.group ?? null);
    if (rackId === null) return null;
    made = { ...made, places: [...made.places, seated(freshPlace(lifterId, rackId))] };
  }
  const mark = markOf(made, day.date);
  return { ...made, planned: { seasonId, askedId, mark, ...(boxes && { boxes }) } };
}

/** The start of one lifter in a group: the own box of the plan, unless the coach has set another. */
function startIn(
  place: Place,
  before: GroupBefore,
  start: Start,
  boxes: GroupWanted['boxes'],
): Place['start'] {
  const boxOf = (of: GroupWanted['boxes']): Start | null => {
    const own = of?.find(({ lifterId }) => lifterId === place.lifterId);
    return own ? { way: 'box', heightM: own.heightM } : null;
  };
  const given = boxOf(before.planned?.boxes);
  if (given === null && boxes === undefined) return place.start;
  const is = place.start ?? before.start ?? null;
  const isByCoach = given === null ? place.start !== null : is !== null && !isSameStart(is, given);
  const own = isByCoach ? is : boxOf(boxes);
  return own === null || isSameStart(own, start) ? null : own;
}

function isAsWanted(group: Group, { work, lifterIds, boxes }: GroupWanted): boolean {
  const is = [workOf(group), lifterIdsOf(group), boxesIn(group.planned?.boxes)];
  return fingerprint(is) === fingerprint([work, lifterIds.toSorted(), boxesIn(boxes)]);
}

function boxesIn(boxes: GroupWanted['boxes'] = []): string[] {
  return boxes.map(({ lifterId, heightM }) => `${lifterId} ${heightM}`).toSorted();
}

/** Of what the plan says: the work, who does it, and when; racks and turns are the coach's. */
function markOf(group: Group, date: string): string {
  return fingerprint([date, workOf(group), lifterIdsOf(group)]);
}

const { title, work, lift, start, aim, blocks, leastChance, bounds } = groupShape.shape;
const workFields = Object.keys({ title, work, lift, start, aim, blocks, leastChance, bounds });

function workOf(group: Group): object {
  return Object.fromEntries(workFields.map((field) => [field, Reflect.get(group, field)]));
}

function lifterIdsOf({ places, away }: Pick<Group, 'places' | 'away'>): string[] {
  return [...places, ...away].map(({ lifterId }) => lifterId).toSorted();
}
