import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { isoWeek } from '#contract/calendar/isoWeek.ts';
import type { GroupAsked, Method, Variant } from '#contract/records/method.ts';
import type { HeldTo } from '#contract/season/heldTo.ts';
import type {
  PlannedDay,
  PlannedGroup,
  PlannedWeek,
  SeasonAsk,
  SeasonPlan,
  SetByHand,
} from '#contract/season/seasonPlan.ts';
import { sledWorkJ } from '#core/season/sledWork.ts';
import { type LiftsAtShare, weekLoad } from '#core/season/weekLoad.ts';
import { aimByHand, aimsOfWeek, inTurn, type WeekAt } from './dayAim.ts';
import { aimKeptTo, heldOn, startsKeptTo } from './keptTo.ts';
import { isHeldFree, layWeeks, type WeekLaid } from './layWeeks.ts';
import { rotation, type StartChosen } from './rotation.ts';
import { seasonWarnings } from './seasonWarnings.ts';

/**
 * A season by a method: phases backwards from each meet, weeks and days filled, each group an aim and blocks as the day screen has them, or as the
 * coach set it. The same question has the same answer; nothing of the records is read. Plans by one method may share what they ask alike (`asAsked`).
 */
export function planSeason(
  method: Method,
  ask: SeasonAsk,
  gravity: number,
  byHand: readonly SetByHand[] = [],
  asAsked = groupsAsAsked(),
): SeasonPlan {
  const { weeks: laid, warnings } = layWeeks(method, ask);
  const hand = handOf(byHand);
  const nextVariant = rotation(startsChosen(byHand, laid));
  const filling = { ask, gravity, nextVariant, takeByHand: hand.take, asAsked };
  const weeks = laid.map((week, at) => plannedWeek(week, at, filling));
  return {
    methodId: method.id,
    methodVersion: method.version,
    meets: ask.meets,
    weeks,
    warnings: [
      ...warnings,
      ...seasonWarnings(method, weeks),
      ...hand.left().map(({ date, askedId }) => ({ code: 'strayByHand' as const, date, askedId })),
    ],
  };
}

interface Filling {
  ask: SeasonAsk;
  gravity: number;
  nextVariant: ReturnType<typeof rotation>;
  takeByHand: (date: string, askedId: string) => SetByHand | undefined;
  asAsked: ReturnType<typeof groupsAsAsked>;
}

/** The groups of whoever is held to nothing and has nothing set by hand: they follow from week and start alone, and are made once for all such weeks and lifters. */
export function groupsAsAsked() {
  const made = new Map<GroupAsked, Map<string, PlannedGroup[]>>();
  return (group: GroupAsked, at: WeekAt, variant: Variant): PlannedGroup[] => {
    const ofGroup = made.get(group) ?? new Map<string, PlannedGroup[]>();
    made.set(group, ofGroup);
    const key = `${at.wave} ${at.weekOfWave} ${variant.id}`;
    const groups = ofGroup.get(key) ?? plannedGroups(group, at, variant, null, []);
    ofGroup.set(key, groups);
    return groups;
  };
}

/** The starts that the coach chose, by the week that they lie in. */
function startsChosen(byHand: readonly SetByHand[], laid: readonly WeekLaid[]): StartChosen[] {
  const first = dayNumber(laid[0]!.monday);
  return byHand.flatMap(({ date, askedId, instead }) => {
    const start = instead?.start ?? null;
    return start === null ? [] : [{ askedId, start, week: Math.floor((dayNumber(date) - first) / 7) }];
  });
}

/** What was set by hand, each to be taken once; `left` tells what had no place. */
function handOf(byHand: readonly SetByHand[]) {
  const open = new Map(byHand.map((set) => [`${set.date} ${set.askedId}`, set]));
  return {
    take(date: string, askedId: string): SetByHand | undefined {
      const key = `${date} ${askedId}`;
      const set = open.get(key);
      open.delete(key);
      return set;
    },
    left: () => [...open.values()],
  };
}

function plannedWeek(
  { monday, in: within, meets }: WeekLaid,
  at: number,
  { ask, gravity, nextVariant, takeByHand, asAsked }: Filling,
): PlannedWeek {
  const first = dayNumber(monday);
  const meetsOfWeek = meets.map((meet) => ask.meets[meet]!);
  const days = (within?.phase.days ?? []).flatMap(({ weekday, title, groups, ...beside }): PlannedDay[] => {
    const date = dateOfDay(first + weekday - 1);
    if (date < ask.from || isHeldFree(date, meetsOfWeek)) return [];
    const closed = ask.closed.find(({ from, until }) => date >= from && date <= until)?.why ?? null;
    if (closed !== null) return [{ date, title, closed, groups: [], accessories: [], sleds: [], holds: [] }];
    const planned = groups.flatMap((group) => {
      const set = takeByHand(date, group.id);
      // What is left out is not done, and its variant stays due.
      if (set?.instead === null) return [];
      const instead = set?.instead ?? null;
      const held = heldOn(ask.held, group.lift, date);
      const start = instead?.start ?? null;
      // What the coach chose stands, too deep as it may be: the day says so.
      const open = held.length === 0 || start !== null ? group : startsKeptTo(group, held);
      const variant = nextVariant(open, at, start);
      return instead === null && held.length === 0
        ? asAsked(group, within!, variant)
        : plannedGroups(group, within!, variant, instead, held);
    });
    return [{ date, title, closed, groups: planned, ...beside }];
  });
  return {
    monday,
    isoWeek: isoWeek(monday),
    phaseId: within?.phase.id ?? null,
    weekOfPhase: within && within.weekOfPhase + 1,
    wave: within && within.wave + 1,
    weekOfWave: within && within.weekOfWave + 1,
    meets,
    days,
    load: loadOf(days, gravity),
  };
}

/** What the days of a week come to. */
export function loadOf(days: readonly PlannedDay[], gravity: number): PlannedWeek['load'] {
  const sleds = days.flatMap((day) => day.sleds);
  const pulledJ = sleds.reduce((work, sled) => work + sledWorkJ(sled, gravity), 0);
  return { ...weekLoad(sevenDays(days)), sledWorkJ: pulledJ };
}

function plannedGroups(
  asked: GroupAsked,
  at: WeekAt,
  { id: variantId, start }: Variant,
  instead: SetByHand['instead'],
  held: readonly HeldTo[],
): PlannedGroup[] {
  const { id: askedId, title, work, lift, leastChance, bounds } = asked;
  const blocks = instead?.blocks ?? inTurn(asked.blocks, at.weekOfWave);
  // What the coach set stands; the day keeps to the restriction when it is worked out.
  const aims = instead?.aim
    ? [aimByHand(instead.aim)]
    : aimsOfWeek(asked.aim, at).map((aim) => aimKeptTo(aim, blocks, held));
  return aims.map((aimed) => ({
    askedId,
    title,
    work,
    lift,
    variantId,
    start,
    blocks,
    leastChance,
    bounds,
    byHand: instead !== null,
    ...aimed,
  }));
}

/** Lifts of the day by their shares, as one lifter below every level does them; what names no share is left out. */
function liftsOf({ groups }: Pick<PlannedDay, 'groups'>): LiftsAtShare[] {
  return groups.flatMap(({ leastTimesBodyMass, lockoutShare, meanShare, blocks }) =>
    leastTimesBodyMass !== null || lockoutShare === null || meanShare === null
      ? []
      : blocks.map(({ sets, reps, shareOfAim }) => ({
          lifts: sets * reps,
          meanShare: meanShare * shareOfAim,
          lockoutShare: lockoutShare * shareOfAim,
        })),
  );
}

function sevenDays(days: readonly PlannedDay[]): LiftsAtShare[][] {
  const rest = Array.from({ length: 7 - days.length }, () => []);
  return [...days.map(liftsOf), ...rest];
}
