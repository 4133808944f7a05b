import type { Lift } from '#contract/records/lift.ts';
import type { PlannedWeek } from '#contract/season/seasonPlan.ts';

/** What the lifts of a week come to, as shares of the reference maximum; null: none of them names a share. */
export interface WeekShares {
  lifts: number;
  /** At lockout on average, and of that bands alone. */
  lockoutShare: number | null;
  bandShare: number | null;
  /** The heaviest at lockout. */
  peakShare: number | null;
}

/** Of one lift, or of all of them. Steps of a work-up count with their own share of the aim; bands hang on all of them alike. */
export function weekShares({ days }: Pick<PlannedWeek, 'days'>, lift: Lift | null): WeekShares {
  const sets = days
    .flatMap(({ groups }) => groups)
    .filter((group) => lift === null || group.lift === lift)
    .flatMap(({ lockoutShare, bandShare, blocks }) =>
      blocks.map(({ sets: count, reps, shareOfAim }) => {
        const bands = bandShare ?? 0;
        return {
          lifts: count * reps,
          bands,
          atLockout: lockoutShare === null ? null : (lockoutShare - bands) * shareOfAim + bands,
        };
      }),
    );
  const lifts = sum(sets.map((set) => set.lifts));
  const told = sets.flatMap(({ atLockout, ...set }) => (atLockout === null ? [] : [{ ...set, atLockout }]));
  const toldLifts = sum(told.map((set) => set.lifts));
  if (toldLifts === 0) return { lifts, lockoutShare: null, bandShare: null, peakShare: null };
  return {
    lifts,
    lockoutShare: sum(told.map((set) => set.lifts * set.atLockout)) / toldLifts,
    bandShare: sum(told.map((set) => set.lifts * set.bands)) / toldLifts,
    peakShare: Math.max(...told.map((set) => set.atLockout)),
  };
}

const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0);
