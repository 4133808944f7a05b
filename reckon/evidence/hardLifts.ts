import { setupKey } from '#contract/log/setupKey.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { Best } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { likelyLifts } from '#core/evidence/likelyLifts.ts';
import { grouped } from '#core/numeric/grouped.ts';
import type { HardLift } from './HardLift.ts';
import type { MeanPull } from './meanPull.ts';

/** More reps say little of a single (judgement; formulas spread from there on). */
const MOST_REPS = 5;
const MOST_LEFT = 2;
/**
 * A last rep no faster than this was hard (m/s): mean speed of powerlifters at their maximum, 0.23, 0.10 and 0.14 (Helms et
 * al. 2017, J Strength Cond Res 31:292), and 0.12 for a rep or two left (judgement).
 */
const HARD_MPS: Record<Lift, number> = { squat: 0.35, bench: 0.22, deadlift: 0.26 };
/** Without a word or a speed, the top of a day counts for up to so many reps ... */
const MOST_REPS_UNSAID = 3;
/** ... where no bar was lifted in more sets with that setup, as speed work is. */
const MOST_ALIKE = 2;
/**
 * The hard lifts of the gym: sets with a miss, with at most 2 reps left, with a slow last rep, or, where none of this is
 * told, the top of the day's rise in weight with a setup (judgement). Several reps become a single by the formula of
 * Epley (1985), `total * (30 + reps) / 31`, on bar, bands and chains together. Bests written down count as singles.
 */
export function hardLifts(sets: readonly LoggedSet[], bests: readonly Best[], pull: MeanPull): HardLift[] {
  const found = hardLiftsOf(bests, pull);
  found.take(sets);
  return found.all();
}

/** The same of a log that is too long to be held at once, and is taken in whole days in its order. */
export function hardLiftsOf(bests: readonly Best[], pull: MeanPull) {
  const fromLog: HardLift[] = [];
  return {
    take(sets: readonly LoggedSet[]): void {
      const counting = sets.filter(
        ({ struckAt, platform, made }) => struckAt === null && !platform && made > 0 && made <= MOST_REPS,
      );
      const withKey = counting.map((set) => ({ set, key: setupKey(set) }));
      const days = grouped(withKey, ({ set, key }) => `${set.lifterId} ${set.doneOn} ${key}`);
      for (const day of days.values()) {
        const tops = topsOf(day.map(({ set }) => set));
        for (const { set, key } of day) {
          if (!(saidHard(set) ?? tops.includes(set))) continue;
          const hung = pull(set);
          if (hung === null) continue;
          fromLog.push(hardLift(set, key, set.made, asSingle(set, hung.bandKg + hung.chainKg)));
        }
      }
    },
    all(): HardLift[] {
      const written = bests
        .filter(({ platform }) => !platform)
        .map((best) => hardLift(best, setupKey(best), 1, best.setup.barKg));
      return likelyLifts([...fromLog, ...written].sort((a, b) => a.doneOn.localeCompare(b.doneOn)));
    },
  };
}

/** Whether a miss, the reps left or the last rep's speed say that it was hard; null where none of them is told. */
function saidHard({ made, reps, repsInReserve, meanSpeedsMps, lift }: LoggedSet): boolean | null {
  if (made < reps) return true;
  if (repsInReserve !== null) return repsInReserve <= MOST_LEFT;
  // One speed of several reps is that of the fastest.
  return meanSpeedsMps.length === made ? meanSpeedsMps.at(-1)! <= HARD_MPS[lift] : null;
}

/** The heaviest sets of a day with one setup, where the weight rose to them. A single line may be all that was noted of speed work. */
function topsOf(day: readonly LoggedSet[]): LoggedSet[] {
  const byBar = [...grouped(day, ({ setup }) => `${setup.barKg}`).values()];
  const rose = byBar.length > 1 && byBar.every((alike) => alike.length <= MOST_ALIKE);
  const heaviestKg = Math.max(...day.map(({ setup }) => setup.barKg));
  if (!rose) return [];
  return day.filter(({ setup, made }) => setup.barKg === heaviestKg && made <= MOST_REPS_UNSAID);
}

function hardLift(done: LoggedSet | Best, key: string, reps: number, barKg: number): HardLift {
  const { lifterId, lift, equipment, setup, doneOn } = done;
  return { lifterId, lift, equipment, setup, doneOn, key, reps, barKg };
}

function asSingle({ setup, made, reps, repsInReserve }: LoggedSet, hungKg: number): number {
  const possible = made + (made < reps ? 0 : (repsInReserve ?? 0));
  return ((setup.barKg + hungKg) * (30 + possible)) / 31 - hungKg;
}
