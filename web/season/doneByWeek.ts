import { mondayOf } from '#contract/calendar/isoWeek.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** What a lifter did of one lift in one week. */
export interface DoneInWeek {
  lifts: number;
  /** The heaviest made lift at lockout, as a share of the reference maximum; null: no load of that week can be told. */
  peakShare: number | null;
  /** Work done on bar, bands and chains (J); null: of some set it cannot be told. */
  workJ: number | null;
}

/**
 * The sets of one lift, week by week, by its Monday. `lockoutKg` tells what a set held at lockout and `workJ` what its made reps came to, null where
 * its gear is no longer kept; they are asked of made sets alone. `referenceKg` null: nothing to take a share of.
 */
export function doneByWeek(
  sets: readonly LoggedSet[],
  lift: Lift,
  {
    lockoutKg,
    workJ,
    referenceKg,
  }: {
    lockoutKg: (set: LoggedSet) => number | null;
    workJ: (set: LoggedSet) => number | null;
    referenceKg: number | null;
  },
): ReadonlyMap<string, DoneInWeek> {
  const weeks = new Map<string, DoneInWeek>();
  for (const set of sets) {
    if (set.lift !== lift || set.struckAt !== null || set.made === 0) continue;
    const monday = mondayOf(set.doneOn);
    const before = weeks.get(monday) ?? { lifts: 0, peakShare: null, workJ: 0 };
    const loadKg = referenceKg === null ? null : lockoutKg(set);
    const share = loadKg === null || referenceKg === null ? null : loadKg / referenceKg;
    const ownJ = workJ(set);
    weeks.set(monday, {
      lifts: before.lifts + set.made,
      peakShare:
        share === null ? before.peakShare : Math.max(share, before.peakShare ?? Number.NEGATIVE_INFINITY),
      workJ: ownJ === null || before.workJ === null ? null : before.workJ + ownJ,
    });
  }
  return weeks;
}
