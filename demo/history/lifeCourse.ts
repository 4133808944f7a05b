import type { Lift } from '#contract/records/lift.ts';
import type { Chance } from './Chance.ts';

/** What came in between in two invented years: when a lifter did not train and what it cost. */
export interface LifeCourse {
  firstDay: number;
  meetDays: number[];
  breaks: { fromDay: number; days: number }[];
  /** A hurt lift is trained on, lighter, and comes back over weeks. */
  injury: { day: number; lift: Lift; depth: number } | null;
  /** Day of the year's best shape, and how far above the mean it is (ln). */
  season: { bestDay: number; height: number };
  /** Day on which a block of five weeks begins. */
  blockDay: number;
  /** Every lifter keeps a share of training days of their own. */
  attendance: number;
}

const YEAR_DAYS = 365;
const BLOCK_DAYS = 35;
/** Tiredness by week of a block, the fifth a light one (ln). */
const BLOCK_COST = [0, 0.004, 0.009, 0.013, 0.003] as const;
/** Rest before a meet is worth this at most (ln); it grows over the last days. */
const PEAK = 0.014;
const TAPER_DAYS = 10;
/** A day away costs this, after a first week that costs nothing (ln); it comes back in this many days. */
const AWAY_COST = 0.0022;
const FREE_DAYS = 7;
const AWAY_BACK_DAYS = 24;
const INJURY_BACK_DAYS = 26;
/** Nobody goes away so shortly before a meet, or makes a best so shortly after. */
const CLEAR_OF_MEET_DAYS = 60;
const CLEAR_OF_BEST_DAYS = 14;

/** `bestDays`: gym bests, which nobody makes just back from a break. */
export function lifeCourse(
  firstDay: number,
  meetDays: number[],
  bestDays: readonly number[],
  chance: Chance,
): LifeCourse {
  const breaks: LifeCourse['breaks'] = [];
  const isClear = (from: number, days: number) =>
    from > firstDay + 40 &&
    from + days < -4 &&
    !meetDays.some((meet) => meet > from - 3 && meet < from + days + CLEAR_OF_MEET_DAYS) &&
    !bestDays.some((best) => best > from && best < from + days + CLEAR_OF_BEST_DAYS) &&
    !breaks.some((other) => from < other.fromDay + other.days + 30 && from + days + 30 > other.fromDay);
  const clearDay = (days: number) => {
    for (let i = 0; i < 60; i += 1) {
      const day = Math.round(chance.between(firstDay, 0));
      if (isClear(day, days)) return day;
    }
    return null;
  };
  const months = -firstDay / 30;
  for (let i = 0; i < months / 6; i += 1) {
    const days = chance.pick([7, 7, 10, 10, 14, 14, 21, 35]);
    const fromDay = clearDay(days);
    if (fromDay !== null) breaks.push({ fromDay, days });
  }
  const injuryDay = chance.happens(0.6) ? clearDay(30) : null;
  const lift = chance.pick(['squat', 'bench', 'deadlift'] as const);
  return {
    firstDay,
    meetDays,
    breaks,
    injury: injuryDay === null ? null : { day: injuryDay, lift, depth: chance.between(0.08, 0.18) },
    season: { bestDay: chance.between(-YEAR_DAYS, 0), height: chance.between(0.004, 0.016) },
    blockDay: Math.round(chance.between(-BLOCK_DAYS, 0)),
    attendance: chance.between(0.78, 0.95),
  };
}

export function isAway({ breaks }: LifeCourse, day: number): boolean {
  return breaks.some(({ fromDay, days }) => day >= fromDay && day < fromDay + days);
}

export function weekOfBlock({ blockDay }: LifeCourse, day: number): number {
  const within = (((day - blockDay) % BLOCK_DAYS) + BLOCK_DAYS) % BLOCK_DAYS;
  return Math.floor(within / 7);
}

/** The next meet, as days from `day`; endless where there is none. */
export function daysToMeet({ meetDays }: LifeCourse, day: number): number {
  return Math.min(...meetDays.filter((meet) => meet >= day).map((meet) => meet - day));
}

/** What season, blocks, rest and absence add to ln strength on a day, on top of the long gain. */
export function lifeEffect(life: LifeCourse, lift: Lift, day: number): number {
  const { season, injury, breaks } = life;
  const drift = season.height * Math.cos((2 * Math.PI * (day - season.bestDay)) / YEAR_DAYS);
  const toMeet = daysToMeet(life, day);
  const rested = Math.max(0, 1 - toMeet / TAPER_DAYS);
  const block = BLOCK_COST[weekOfBlock(life, day)]! * (1 - rested);
  const away = breaks.reduce((sum, { fromDay, days }) => {
    if (day < fromDay) return sum;
    const cost = AWAY_COST * Math.max(0, Math.min(day - fromDay, days) - FREE_DAYS);
    return sum + cost * Math.exp(-Math.max(0, day - fromDay - days) / AWAY_BACK_DAYS);
  }, 0);
  const hurts = injury !== null && injury.lift === lift && day >= injury.day;
  const hurt = hurts ? injury.depth * Math.exp(-(day - injury.day) / INJURY_BACK_DAYS) : 0;
  return drift + PEAK * rested - block - away - hurt;
}
