import { dayNumber } from '#contract/calendar/dayNumber.ts';
import { isoWeek } from '#contract/calendar/isoWeek.ts';
import type { Method } from '#contract/records/method.ts';
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
import { layWeeks, type WeekLaid } from './layWeeks.ts';
import { type DayChosen, type GroupChosen, madeAsAsked, type WeekMade } from './madeAsAsked.ts';
import { rotation, type StartChosen } from './rotation.ts';
import { dayWarnings, seasonWarnings } from './seasonWarnings.ts';

/**
 * A season by a method: phases backwards from each meet, weeks and days filled, each group an aim and blocks as the day screen has them, or as the
 * coach set it. The same question has the same answer; nothing of the records is read. Plans by one method under one gravity may share what they ask alike (`asAsked`).
 */
export function planSeason(
  method: Method,
  ask: SeasonAsk,
  gravity: number,
  byHand: readonly SetByHand[] = [],
  asAsked = madeAsAsked(),
): SeasonPlan {
  const { weeks: laid, warnings } = asAsked.laid(ask, () => layWeeks(method, ask));
  const hand = handOf(byHand);
  const nextVariant = rotation(startsChosen(byHand, laid));
  const made = laid.map((week, at) => {
    const days = chosenDays(week, at, { ask, nextVariant, takeByHand: hand.take });
    return asAsked.week(week, days, () => madeWeek(method, week, days, gravity, asAsked));
  });
  const weeks = made.map(({ week }) => week);
  return {
    methodId: method.id,
    methodVersion: method.version,
    meets: ask.meets,
    weeks,
    warnings: [
      ...warnings,
      ...made.flatMap(({ told }) => told),
      ...seasonWarnings(method, weeks),
      ...hand.left().map(({ date, askedId }) => ({ code: 'strayByHand' as const, date, askedId })),
    ],
  };
}

interface Choosing {
  ask: SeasonAsk;
  nextVariant: ReturnType<typeof rotation>;
  takeByHand: (date: string, askedId: string) => SetByHand | undefined;
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

/** Each start is the next in its group's turn: weeks are to be asked in their order, each once. */
function chosenDays({ days }: WeekLaid, at: number, { ask, nextVariant, takeByHand }: Choosing): DayChosen[] {
  return days.map(({ date, day }): DayChosen => {
    const closed = ask.closed.find(({ from, until }) => date >= from && date <= until)?.why ?? null;
    if (closed !== null) return { date, day, closed, chosen: [] };
    const chosen = day.groups.flatMap((group): GroupChosen[] => {
      const set = takeByHand(date, group.id);
      // What is left out is not done, and its variant stays due.
      if (set?.instead === null) return [];
      const instead = set?.instead ?? null;
      const held = heldOn(ask.held, group.lift, date);
      const start = instead?.start ?? null;
      // What the coach chose stands, too deep as it may be: the day says so.
      const open = held.length === 0 || start !== null ? group : startsKeptTo(group, held);
      return [{ group, variant: nextVariant(open, at, start), instead, held }];
    });
    return { date, day, closed, chosen };
  });
}

function madeWeek(
  method: Method,
  { monday, in: within, meets }: WeekLaid,
  chosen: readonly DayChosen[],
  gravity: number,
  asAsked: ReturnType<typeof madeAsAsked>,
): WeekMade {
  const days = chosen.map(({ date, day, closed, chosen: groups }): PlannedDay => {
    const { weekday: _, title, groups: __, ...beside } = day;
    if (closed !== null) return { date, title, closed, groups: [], accessories: [], sleds: [], holds: [] };
    return {
      date,
      title,
      closed,
      groups: groups.flatMap((each) => asAsked.groups(each, within!, () => plannedGroups(each, within!))),
      ...beside,
    };
  });
  return {
    week: {
      monday,
      isoWeek: isoWeek(monday),
      phaseId: within?.phase.id ?? null,
      weekOfPhase: within && within.weekOfPhase + 1,
      wave: within && within.wave + 1,
      weekOfWave: within && within.weekOfWave + 1,
      meets,
      days,
      load: loadOf(days, gravity),
    },
    told: days.flatMap((day) => dayWarnings(method, day)),
  };
}

/** What the days of a week come to. */
export function loadOf(days: readonly PlannedDay[], gravity: number): PlannedWeek['load'] {
  const sleds = days.flatMap((day) => day.sleds);
  const pulledJ = sleds.reduce((work, sled) => work + sledWorkJ(sled, gravity), 0);
  return { ...weekLoad(sevenDays(days)), sledWorkJ: pulledJ };
}

function plannedGroups(
  { group: asked, variant: { id: variantId, start }, instead, held }: GroupChosen,
  at: WeekAt,
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
