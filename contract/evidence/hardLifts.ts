import type { Equipment, Lift, Setup } from '#contract/records/lift.ts';
import type { Best } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { setupKey } from '#contract/setupKey.ts';
import { grouped } from '#core/evidence/grouped.ts';
import type { MeanPull } from './meanPull.ts';

/** A lift that tells what a lifter could do that day with one exact setup. */
export interface HardLift {
  lifterId: string;
  lift: Lift;
  equipment: Equipment;
  setup: Setup;
  doneOn: string;
  /** The exact setup; see contract/setupKey.ts. */
  key: string;
  /** The bar of a single of the same worth. */
  barKg: number;
}

/** More reps say little of a single (judgement; formulas spread from there on). */
const MOST_REPS = 5;
const MOST_LEFT = 2;
/** Without a word on effort, a set of up to so many reps counts where it was that day's heaviest with its setup ... */
const MOST_REPS_UNSAID = 3;
/** ... and was not done again and again, as speed work is. */
const MOST_SETS_UNSAID = 2;

/**
 * The hard lifts of the gym: sets with a miss, with at most 2 reps left, or, where nothing is said, the heaviest of the
 * day for up to 3 reps in up to 2 sets (judgement). Several reps become a single by the formula of Epley (1985),
 * `total * (30 + reps) / 31`, on bar, bands and chains together. Bests written down count as singles.
 */
export function hardLifts(sets: readonly LoggedSet[], bests: readonly Best[], pull: MeanPull): HardLift[] {
  const counting = sets.filter(
    ({ struckAt, platform, made }) => struckAt === null && !platform && made > 0 && made <= MOST_REPS,
  );
  const withKey = counting.map((set) => ({ set, key: setupKey(set) }));
  const days = grouped(withKey, ({ set, key }) => `${set.lifterId} ${set.doneOn} ${key}`);
  const fromLog = [...days.values()].flatMap((day) => {
    const heaviestKg = Math.max(...day.map(({ set }) => set.setup.barKg));
    const alike = day.filter(({ set }) => set.setup.barKg === heaviestKg).length;
    return day.flatMap(({ set, key }) => {
      const unsaid = set.repsInReserve === null && set.made === set.reps;
      const isTop =
        set.setup.barKg === heaviestKg && set.made <= MOST_REPS_UNSAID && alike <= MOST_SETS_UNSAID;
      if (unsaid ? !isTop : set.made === set.reps && set.repsInReserve! > MOST_LEFT) return [];
      const hung = pull(set);
      return hung === null ? [] : [hardLift(set, key, asSingle(set, hung.bandKg + hung.chainKg))];
    });
  });
  const written = bests
    .filter(({ platform }) => !platform)
    .map((best) => hardLift(best, setupKey(best), best.setup.barKg));
  return [...fromLog, ...written].sort((a, b) => a.doneOn.localeCompare(b.doneOn));
}

function hardLift(done: LoggedSet | Best, key: string, barKg: number): HardLift {
  const { lifterId, lift, equipment, setup, doneOn } = done;
  return { lifterId, lift, equipment, setup, doneOn, key, barKg };
}

function asSingle({ setup, made, reps, repsInReserve }: LoggedSet, hungKg: number): number {
  const possible = made + (made < reps ? 0 : (repsInReserve ?? 0));
  return ((setup.barKg + hungKg) * (30 + possible)) / 31 - hungKg;
}
