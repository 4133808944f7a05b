import { type BuiltBox, boxHeights, boxOfHeight, nearestBox } from '#contract/day/boxHeights.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { GearWarning } from '#contract/season/gearWarning.ts';
import type { DayOfLifter, GroupOfLifter } from '#contract/season/seasonPlan.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { bandWays } from './bandWays.ts';
import { gearOfHour, type HourAsked, type HourFound } from './gearOfHour.ts';

/** What is planned for one lifter: on each day the groups of this lifter's own level of strength alone. */
export interface LifterDays {
  lifterId: string;
  days: readonly Pick<DayOfLifter, 'date' | 'groups'>[];
}

/** One set with the bar loaded and the next lifter at it, by the trade's set a minute. Common practice, no source. */
const TURN_MINUTES = 1;

/**
 * Holds racks, bands and the hour against everything that is planned. Everybody who does one kind of work of one lift on a day does it at the same time,
 * and the works of a day follow each other, each with its part of the club's training time. Days in a row with the same fault are told once, the soonest first.
 */
export function gearOverSeason(records: ClubRecords, lifters: readonly LifterDays[]): GearWarning[] {
  const waysOf = bandWays(records);
  const built = boxHeights(records.box);
  const known = new Map<string, HourFound>();
  const found = hoursOf(records, lifters).flatMap(({ asked, title }): GearWarning[] => {
    if (!records.rack.some(({ lifts }) => lifts.includes(asked.lift)))
      return [{ code: 'noRack', ...onOneDay(asked, title) }];
    const { on, ...alike } = asked;
    const key = JSON.stringify([alike, retiredBy(records, on)]);
    if (!known.has(key)) known.set(key, gearOfHour(records, asked, waysOf));
    return [...boxesNotThere(built, asked, title), ...warningsOf(records, asked, title, known.get(key)!)];
  });
  return inARow(found);
}

interface Hour {
  asked: HourAsked;
  title: string;
}

function hoursOf({ club }: ClubRecords, lifters: readonly LifterDays[]): Hour[] {
  const minutes = club[0]?.trainingMinutes ?? 120;
  const hours = new Map<
    string,
    { date: string; groups: GroupOfLifter[]; lifterIds: string[]; works: number }
  >();
  for (const { lifterId, days } of lifters)
    for (const { date, groups } of days)
      for (const group of groups) {
        const key = `${date} ${group.lift} ${group.work}`;
        const hour = hours.get(key) ?? { date, groups: [], lifterIds: [], works: 0 };
        hour.groups.push(group);
        hour.lifterIds.push(lifterId);
        hour.works = Math.max(hour.works, groups.length);
        hours.set(key, hour);
      }
  return [...hours.values()]
    .sort((a, b) => (a.date < b.date ? -1 : 1))
    .map(({ date, groups, lifterIds, works }) => {
      const setsEach = Math.max(...groups.map(setsOf));
      return {
        title: groups[0]!.title,
        asked: {
          on: date,
          lift: groups[0]!.lift,
          lifters: groups.map(({ start, bandShare }, at) => ({
            lifterId: lifterIds[at]!,
            start,
            bandShare: bandShare ?? 0,
          })),
          mostARack: Math.max(1, Math.floor(minutes / works / (setsEach * TURN_MINUTES))),
          turnMinutes: works * setsEach * TURN_MINUTES,
        },
      };
    });
}

function setsOf({ blocks }: GroupOfLifter): number {
  return blocks.reduce((sum, { sets }) => sum + sets, 0);
}

/** Which pairs are out of service by then: with the same ones left the answer is the same. */
function retiredBy({ bandPair }: ClubRecords, on: string): string[] {
  return bandPair.flatMap(({ id, retiredOn }) => (retiredOn !== null && retiredOn <= on ? [id] : []));
}

function warningsOf(
  records: ClubRecords,
  asked: HourAsked,
  title: string,
  { short, outOfReach, notJudged }: HourFound,
): GearWarning[] {
  const { lifters } = asked;
  const onDays = onOneDay(asked, title);
  const nameOf = (lifterId: string) => recordById(records, 'lifter', lifterId).name;
  const shares = lifters.map(({ bandShare }) => bandShare);
  return [
    ...(short === null
      ? []
      : [
          {
            code: 'gearShort' as const,
            ...onDays,
            names: short.lifterIds.map(nameOf),
            of: lifters.length,
            bandShares: { least: Math.min(...shares), most: Math.max(...shares) },
            isMost: short.isMost,
            lacking: short.lacking,
            racks: short.racks,
            aRack: asked.mostARack,
            mends: short.mends,
          },
        ]),
    ...outOfReach.map(({ lifterId, bandShare, nearestShare }) => ({
      code: 'outOfReach' as const,
      ...onDays,
      name: nameOf(lifterId),
      bandShare,
      nearestShare,
    })),
    ...notJudged.map((lifterId) => ({ code: 'notJudged' as const, ...onDays, name: nameOf(lifterId) })),
  ];
}

/** The heights of boxes that the hour asks for and nobody can build. */
function boxesNotThere(built: readonly BuiltBox[], asked: HourAsked, title: string): GearWarning[] {
  const heights = asked.lifters.flatMap(({ start }) =>
    start.way === 'box' && start.heightM !== null ? [start.heightM] : [],
  );
  return [...new Set(heights)]
    .filter((heightM) => boxOfHeight(built, heightM) === undefined)
    .map((heightM) => {
      const nearestM = nearestBox(built, heightM)?.heightM ?? null;
      return { code: 'noBox' as const, ...onOneDay(asked, title), heightM, nearestM };
    });
}

function onOneDay({ on, lift }: HourAsked, title: string) {
  return { fromOn: on, untilOn: on, days: 1, lift, title };
}

/** A fault that the next days of the same work have too is one, over those days. */
function inARow(warnings: readonly GearWarning[]): GearWarning[] {
  const told: GearWarning[] = [];
  for (const warning of warnings) {
    const before = told.findLast((one) => isOfSame(one, warning));
    if (before !== undefined && faultOf(before) === faultOf(warning)) {
      before.untilOn = warning.untilOn;
      before.days += 1;
    } else told.push({ ...warning });
  }
  return told;
}

/** Whether they tell of the same work, and of the same lifter or box where they tell of one. */
function isOfSame(one: GearWarning, other: GearWarning): boolean {
  return (
    one.code === other.code &&
    one.title === other.title &&
    one.lift === other.lift &&
    whoseOf(one) === whoseOf(other)
  );
}

function whoseOf(warning: GearWarning): string | null {
  if (warning.code === 'noBox') return String(warning.heightM);
  return 'name' in warning ? warning.name : null;
}

function faultOf(warning: GearWarning): string {
  return JSON.stringify({ ...warning, fromOn: '', untilOn: '', days: 0 });
}
