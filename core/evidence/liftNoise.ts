import { grouped } from '#core/numeric/grouped.ts';
import type { RepeatedLift } from './RepeatedLift.ts';

/** How much the same lifter's hard lift differs from day to day, as a share of the bar. */
export interface LiftNoise {
  share: number;
  known: 'measured' | 'assumed';
  /** Lifts repeated within two weeks that it was measured from. */
  pairs: number;
}

/**
 * Until the log tells: 2 % (assumption; repeated maxima of all sorts of people differ by 0.5 to 12.1 %, median 4.2 %,
 * less for the trained: Grgic et al. 2020, Sports Med Open 6:31).
 */
export const ASSUMED_SHARE = 0.02;
/** That median is the most that is believed: beyond it the plan speaks, not the lifter. */
const MOST_SHARE = 0.042;
const LEAST_PAIRS = 20;
const MOST_DAYS = 14;
const MS_A_DAY = 86_400_000;
/** Median of the size of a normal number, over 1. */
const MEDIAN_SIZE = 0.6745;

/** From hard lifts with one exact setup repeated within two weeks for as many reps; by the median, so that a light day in a plan does not count as noise. */
export function liftNoise(lifts: readonly RepeatedLift[]): LiftNoise {
  const sizes = [...grouped(lifts, ({ lifterId, key }) => `${lifterId} ${key}`).values()].flatMap((list) =>
    list.slice(1).flatMap((lift, i) => {
      const before = list[i]!;
      const days = (Date.parse(lift.doneOn) - Date.parse(before.doneOn)) / MS_A_DAY;
      const isRepeat = days > 0 && days <= MOST_DAYS && lift.reps === before.reps;
      return isRepeat && lift.barKg > 0 && before.barKg > 0
        ? [Math.abs(Math.log(lift.barKg / before.barKg))]
        : [];
    }),
  );
  if (sizes.length < LEAST_PAIRS) return { share: ASSUMED_SHARE, known: 'assumed', pairs: sizes.length };
  const median = sizes.toSorted((a, b) => a - b)[Math.floor(sizes.length / 2)]!;
  return {
    share: Math.min(median / MEDIAN_SIZE / Math.SQRT2, MOST_SHARE),
    known: 'measured',
    pairs: sizes.length,
  };
}
