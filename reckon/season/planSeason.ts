import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { isoWeek } from '#contract/calendar/isoWeek.ts';
import type { GroupAsked, Method } from '#contract/records/method.ts';
import type {
  PlannedDay,
  PlannedGroup,
  PlannedWeek,
  SeasonAsk,
  SeasonPlan,
} from '#contract/season/seasonPlan.ts';
import { sledWorkJ } from '#core/season/sledWork.ts';
import { type LiftsAtShare, weekLoad } from '#core/season/weekLoad.ts';
import { aimsOfWeek, inTurn, type WeekAt } from './dayAim.ts';
import { isHeldFree, layWeeks, type WeekLaid } from './layWeeks.ts';
import { rotation } from './rotation.ts';
import { seasonWarnings } from './seasonWarnings.ts';

/**
 * A season by a method: phases backwards from each meet, weeks and days filled, each group an aim and blocks as the day screen has them. The same
 * question has the same answer; nothing of the records is read.
 */
export function planSeason(method: Method, ask: SeasonAsk, gravity: number): SeasonPlan {
  const { weeks: laid, warnings } = layWeeks(method, ask);
  const nextVariant = rotation();
  const weeks = laid.map((week, at) => plannedWeek(week, at, ask, nextVariant, gravity));
  return {
    methodId: method.id,
    methodVersion: method.version,
    meets: ask.meets,
    weeks,
    warnings: [...warnings, ...seasonWarnings(method, weeks)],
  };
}

function plannedWeek(
  { monday, in: within, meets }: WeekLaid,
  at: number,
  ask: SeasonAsk,
  nextVariant: ReturnType<typeof rotation>,
  gravity: number,
): PlannedWeek {
  const days = (within?.phase.days ?? []).flatMap(({ weekday, title, groups, ...beside }): PlannedDay[] => {
    const date = dateOfDay(dayNumber(monday) + weekday - 1);
    if (date < ask.from || isHeldFree(date, ask.meets)) return [];
    const closed = ask.closed.find(({ from, until }) => date >= from && date <= until)?.why ?? null;
    if (closed !== null) return [{ date, title, closed, groups: [], accessories: [], sleds: [], holds: [] }];
    const planned = groups.flatMap((group) => plannedGroups(group, within!, nextVariant(group, at)));
    return [{ date, title, closed, groups: planned, ...beside }];
  });
  const sleds = days.flatMap((day) => day.sleds);
  return {
    monday,
    isoWeek: isoWeek(monday),
    phaseId: within?.phase.id ?? null,
    weekOfPhase: within && within.weekOfPhase + 1,
    wave: within && within.wave + 1,
    weekOfWave: within && within.weekOfWave + 1,
    meets,
    days,
    load: {
      ...weekLoad(sevenDays(days)),
      sledWorkJ: sleds.reduce((work, sled) => work + sledWorkJ(sled, gravity), 0),
    },
  };
}

function plannedGroups(
  asked: GroupAsked,
  at: WeekAt,
  { id: variantId, start }: GroupAsked['variants'][number],
): PlannedGroup[] {
  const { id: askedId, title, work, lift, leastChance, bounds } = asked;
  const blocks = inTurn(asked.blocks, at.weekOfWave);
  return aimsOfWeek(asked.aim, at).map((aimed) => ({
    askedId,
    title,
    work,
    lift,
    variantId,
    start,
    blocks,
    leastChance,
    bounds,
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
