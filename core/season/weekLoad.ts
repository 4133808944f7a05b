/** Lifts made at one share of the reference maximum, bands counted. */
export interface LiftsAtShare {
  lifts: number;
  /** On average over the range. */
  meanShare: number;
  lockoutShare: number;
}

export interface WeekLoad {
  lifts: number;
  /** Mean share of the lifts; null where there are none. */
  meanShare: number | null;
  /** Lifts from `HEAVY` on at lockout. */
  heavyLifts: number;
  /**
   * How alike the days of the week are: the mean over the standard deviation of a day's lifts times share, days of rest counted as nought; null
   * where all are the same. Foster 1998, Med Sci Sports Exerc 30:1164, had it of minutes times effort; from memory.
   */
  monotony: number | null;
}

/** Where the last zone of the volume table begins, and what is called heavy in the surveys of tapers. */
export const HEAVY = 0.9;

/** What a week comes to, its seven days given one by one. */
export function weekLoad(days: readonly (readonly LiftsAtShare[])[]): WeekLoad {
  const all = days.flat();
  const lifts = sum(all.map((each) => each.lifts));
  const loads = days.map((day) => sum(day.map((each) => each.lifts * each.meanShare)));
  const mean = sum(loads) / loads.length;
  const spread = Math.sqrt(sum(loads.map((load) => (load - mean) ** 2)) / (loads.length - 1));
  return {
    lifts,
    meanShare: lifts === 0 ? null : sum(loads) / lifts,
    heavyLifts: sum(all.filter(({ lockoutShare }) => lockoutShare >= HEAVY - 1e-9).map((each) => each.lifts)),
    monotony: spread === 0 ? null : mean / spread,
  };
}

const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0);
