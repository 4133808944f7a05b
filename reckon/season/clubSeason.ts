import { ageOn } from '#contract/calendar/ageOn.ts';
import { isMinor } from '#contract/calendar/isMinor.ts';
import { boxHeights } from '#contract/day/boxHeights.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { lift as anyLift, type Lift, type Start } from '#contract/records/lift.ts';
import { holdsOn, type Restriction } from '#contract/records/lifters.ts';
import type { Method, StartAsked } from '#contract/records/method.ts';
import type { AskedPlan, ClubSeason, LifterOfSeason } from '#contract/season/clubSeason.ts';
import type { HeldTo } from '#contract/season/heldTo.ts';
import {
  type GroupOfLifter,
  type OwnBox,
  type SeasonAsk,
  type SeasonPlan,
  type SeasonWarning,
  type SetByHand,
  seasonAsk,
} from '#contract/season/seasonPlan.ts';
import { compareText } from '#core/numeric/compareText.ts';
import { fingerprint } from '#reckon/basis/fingerprint.ts';
import { tooDeep } from '#reckon/day/restricted.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { assembleHeights } from '#reckon/lifter/assembleHeights.ts';
import { classesOf } from './classesAhead.ts';
import { groupsFor, startFor, type WhoseGroups } from './groupsFor.ts';
import { madeAsAsked } from './madeAsAsked.ts';
import { ownBoxesOf } from './ownBoxesOf.ts';
import { planSeason } from './planSeason.ts';
import { timesBodyMassOf } from './timesBodyMassOf.ts';

type Entry = RecordOf<'seasonEntry'>;

/** Gives the plan that was made for the same key before, or makes it. */
export type RecallPlan = (key: string, make: () => AskedPlan) => AskedPlan;

/**
 * A season worked out for everybody in it: from the records alone, and how strong everybody is on a day, so that the same records have the same plan.
 * Those of whom the same is asked share one. The season must be among the records.
 */
export function clubSeason(
  records: ClubRecords,
  seasonId: string,
  today: string,
  recall: RecallPlan = (_key, make) => make(),
): ClubSeason {
  const season = records.season.find(({ id }) => id === seasonId)!;
  const method = records.method.find(({ id }) => id === season.methodId)!.methodDocument;
  const gravity = gravityOf(records);
  const plans: AskedPlan[] = [];
  const known = new Map<string, number>();
  const asAsked = madeAsAsked();
  const built = boxHeights(records.box);
  const ofMethod = startsOf(method).map(({ start }) => start);
  const methodMark = fingerprint([method, gravity]);
  const planOf = (ask: SeasonAsk, byHand: SetByHand[]): number => {
    const key = JSON.stringify([methodMark, ask, byHand]);
    const make = () => ({
      ...planSeason(method, ask, gravity, byHand, asAsked),
      closed: ask.closed,
      byHand,
      held: ask.held,
    });
    const plan = known.get(key) ?? plans.push(recall(key, make)) - 1;
    known.set(key, plan);
    return plan;
  };
  const lifters = records.seasonEntry
    .filter((entry) => entry.seasonId === seasonId)
    .map((entry): LifterOfSeason => {
      const { meets, leftOut } = meetsOf(records, season, entry);
      const closed = closedFor(records, season, entry);
      const byHand = byHandOf(records, entry);
      const depths = depthsOf([...ofMethod, ...byHand.map(({ instead }) => instead?.start ?? null)]);
      const ownBoxes = ownBoxesOf(records, built, entry.lifterId, depths, today);
      const held = heldFor(records, method, season, entry, { ownBoxes, today });
      const plan = meets.length === 0 ? null : planOf({ from: season.fromOn, meets, closed, held }, byHand);
      const timesBodyMass = timesBodyMassOf(records, entry.lifterId, today);
      const { equipment } = recordById(records, 'lifter', entry.lifterId);
      const lifter = {
        entryId: entry.id,
        lifterId: entry.lifterId,
        plan,
        equipment,
        classes: classesOf(records, entry),
        timesBodyMass,
        ...(ownBoxes.length > 0 && { ownBoxes }),
      };
      const own =
        plan === null
          ? []
          : [
              ...ownWarnings(records, method, plans[plan]!, lifter, today),
              // A club without any box is told once, among its gear.
              ...(built.length === 0 ? [] : ownBoxes.filter(isFarOff).map(farOff)),
            ];
      return { ...lifter, warnings: [...leftOut, ...own] };
    });
  return { seasonId, title: season.title, fromOn: season.fromOn, method, plans, lifters };
}

/** The meets of an entry that can be planned for, in their order; the others as warnings. */
function meetsOf(
  { meet: kept }: Pick<ClubRecords, 'meet'>,
  { fromOn }: RecordOf<'season'>,
  { meetIds }: Entry,
) {
  const meets: SeasonAsk['meets'] = [];
  const leftOut: SeasonWarning[] = [];
  const named = kept.filter(({ id }) => meetIds.includes(id)).toSorted((a, b) => compareText(a.date, b.date));
  for (const { title, date } of named) {
    const next = [...meets, { title, date }];
    if (seasonAsk.safeParse({ from: fromOn, meets: next }).success) meets.push({ title, date });
    else leftOut.push({ code: 'meetLeftOut', title, date });
  }
  return { meets, leftOut };
}

/** Absences of the club and of the lifter from the first day on, in their order. */
function closedFor(
  { absence }: Pick<ClubRecords, 'absence'>,
  { fromOn }: RecordOf<'season'>,
  { lifterId }: Entry,
): SeasonAsk['closed'] {
  return absence
    .filter((one) => (one.lifterId === null || one.lifterId === lifterId) && one.untilOn >= fromOn)
    .map(({ fromOn: from, untilOn: until, why }) => ({ from, until, why }))
    .toSorted(
      (a, b) => compareText(a.from, b.from) || compareText(a.until, b.until) || compareText(a.why, b.why),
    );
}

/** What the lifter is held to from the first day on, in its order, with the starts of the method that are too deep for it. */
function heldFor(
  records: ClubRecords,
  method: Method,
  { fromOn }: RecordOf<'season'>,
  { lifterId }: Entry,
  { ownBoxes, today }: { ownBoxes: readonly OwnBox[]; today: string },
): HeldTo[] {
  const own = records.restriction.filter(
    (one) => one.lifterId === lifterId && (one.untilOn === null || one.untilOn >= fromOn),
  );
  return own
    .map((one): HeldTo => {
      const { lift, fromOn: from, untilOn: until, leastBoxM, mostShare, shareOf } = one;
      const starts = startsOf(method).filter((each) => each.lift === lift);
      const each = new Map(starts.map(({ start }) => [JSON.stringify(start), start]));
      const tooDeep = [...each.values()].filter((start) =>
        isTooDeep(records, one, startFor(start, ownBoxes), today),
      );
      return { lift, from, until, tooDeep, leastBoxM, mostShare, shareOf };
    })
    .toSorted((a, b) => compareText(JSON.stringify(a), JSON.stringify(b)));
}

/** Every start that a method asks for. */
function startsOf({ phases }: Method): { lift: Lift; start: StartAsked }[] {
  return phases.flatMap(({ days }) =>
    days.flatMap(({ groups }) =>
      groups.flatMap(({ lift, variants }) => variants.map(({ start }) => ({ lift, start }))),
    ),
  );
}

/** The depths of own boxes among starts, each once, the deepest first. */
function depthsOf(starts: readonly (StartAsked | null)[]): number[] {
  const depths = starts.flatMap((start) => (start?.way === 'ownBox' ? [start.aboveParallelM] : []));
  return [...new Set(depths)].toSorted((a, b) => a - b);
}

/** A start of which nothing can be told is left to the day, which refuses it where it must. */
function isTooDeep(records: ClubRecords, one: Restriction, start: Start, on: string): boolean {
  const bottomM = (of: Start) => assembleHeights(records, one.lifterId, one.lift, of, on).bottomM;
  const why = assembledOrNull(() =>
    tooDeep([one], start, bottomM(start), (heightM) => bottomM({ way: 'box', heightM })),
  );
  return why !== null;
}

/** What was set of everybody's groups and of this lifter's own, which goes before. */
function byHandOf(
  { plannedByHand }: Pick<ClubRecords, 'plannedByHand'>,
  { seasonId, lifterId }: Entry,
): SetByHand[] {
  const set = new Map<string, SetByHand>();
  for (const whose of [null, lifterId])
    for (const one of plannedByHand) {
      if (one.seasonId !== seasonId || one.lifterId !== whose) continue;
      const { date, askedId, instead } = one;
      set.set(`${date} ${askedId}`, { date, askedId, instead });
    }
  return [...set.entries()].toSorted(([a], [b]) => compareText(a, b)).map(([, one]) => one);
}

/** Boxes and their heights are known to about this (m): more between wanted and had is worth a mat. Judgement. */
const FAR_OFF_M = 0.02;

function isFarOff({ heightM, wantedM }: OwnBox): boolean {
  return Math.abs(heightM - wantedM) > FAR_OFF_M;
}

function farOff(box: OwnBox): SeasonWarning {
  return { code: 'boxFarOff', ...box };
}

type OneLifter = Pick<LifterOfSeason, 'lifterId'> & WhoseGroups;

function ownWarnings(
  records: ClubRecords,
  method: Method,
  plan: SeasonPlan,
  lifter: OneLifter,
  today: string,
): SeasonWarning[] {
  const ofLifts = anyLift.options.flatMap((lift): SeasonWarning[] => [
    ...(lifter.timesBodyMass[lift] === null && hasLevels(method, lift)
      ? [{ code: 'levelUnknown' as const, lift }]
      : []),
    ...restrictedDays(records, plan, lifter, lift, today),
  ]);
  return [...ofMinor(records, plan, lifter, today), ...ofLifts];
}

/** Days ahead on which somebody is under age and has what the usual cautions are for: heavy singles, or bands under load. */
function ofMinor(
  records: Pick<ClubRecords, 'lifter'>,
  plan: SeasonPlan,
  lifter: OneLifter,
  today: string,
): SeasonWarning[] {
  const { bornOn } = recordById(records, 'lifter', lifter.lifterId);
  if (bornOn === null) return [];
  const dates = datesAhead(
    plan,
    lifter,
    today,
    (date) => isMinor(bornOn, date),
    ({ work, bandShare }) => work === 'maximal' || (bandShare ?? 0) > 0,
  );
  const [from] = dates;
  return from === undefined ? [] : [{ code: 'minor', age: ageOn(bornOn, from), days: dates.length, from }];
}

function hasLevels({ phases }: Method, lift: Lift): boolean {
  return phases.some(({ days }) =>
    days.some(({ groups }) =>
      groups.some(
        (group) => group.lift === lift && group.aim.by === 'barAndBands' && group.aim.levels.length > 0,
      ),
    ),
  );
}

/** Days ahead on which a restriction of the lifter meets work in its lift. */
function restrictedDays(
  { restriction }: Pick<ClubRecords, 'restriction'>,
  plan: SeasonPlan,
  lifter: OneLifter,
  lift: Lift,
  today: string,
): SeasonWarning[] {
  return restriction
    .filter((one) => one.lifterId === lifter.lifterId && one.lift === lift)
    .flatMap((one): SeasonWarning[] => {
      const dates = datesAhead(
        plan,
        lifter,
        today,
        (date) => holdsOn(one, date),
        (group) => group.lift === lift,
      );
      const [from] = dates;
      return from === undefined
        ? []
        : [{ code: 'restricted', lift, days: dates.length, from, until: one.untilOn }];
    });
}

/** The days from today on that are such and on which the lifter has such a group. */
function datesAhead(
  { weeks }: SeasonPlan,
  lifter: OneLifter,
  today: string,
  isSuchDate: (date: string) => boolean,
  isSuchGroup: (group: GroupOfLifter) => boolean,
): string[] {
  return weeks
    .flatMap(({ days }) => days)
    .filter((day) => day.date >= today && isSuchDate(day.date) && groupsFor(day, lifter).some(isSuchGroup))
    .map(({ date }) => date);
}
