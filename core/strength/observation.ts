import type { LnKg, LnRatio } from '../numeric/quantity.ts';
import {
  LAST_FACTOR,
  PEAK_FACTOR,
  RESERVE_SD_PER_REP,
  RESERVE_SD_REPS,
  RESERVE_UNSAID_REPS,
  speedSdMps,
} from './noise.ts';
import type { Parameters } from './parameters.ts';
import { atSurplus, type ReadTable } from './readTable.ts';
import type { EffortGroup } from './sessions.ts';
import { isOfSeveral, KEPT_REPS, KEPT_SD_LN, LEFT_REPS, LEFT_SD_REPS } from './workUps.ts';

/*
 * What is observed of a group of alike sets, and with which error (model, "What a set says"): here alone.
 *
 *     surplus    u = ln strength of the day - standsForLn
 *     outcome    made: u + luck > need(made), missed: u + luck < need(made + 1), each so often; luck is one of ENTRIES
 *     speeds     what was measured = mps(u) + sd t
 *     reps       made and left = possible(u) + sd t
 *     kept       need(made and kept) = u + sd t                      t: Student's, TAIL degrees of freedom
 *
 * Two filters read it. `sessionLikelihood` makes of it the probability at every u of a grid; `groupTaker` needs slopes in all
 * parameters at once, so it takes each as a straight line about what is believed. Where misses stopped is read by the first alone: it
 * tells of the shape, hardly of strength. The simulator of the studies draws with the same errors. The long-run sampler of
 * core/checks, which the bench runs too, is written anew in another language on purpose: an error here could not show otherwise.
 */

/** Alike sets of a day count as no more than this many: what one of them hides, the others hide too. */
const MOST_ALIKE = 3;

/** How often what was made and missed in a group counts. */
export function timesCounted({ count }: EffortGroup): number {
  return Math.min(count, MOST_ALIKE);
}

/** ln of the day's raw strength that leaves a group's sets no surplus in the mean; `straightLn` is that of one rested raw set. */
export function standsForLn(group: EffortGroup, straightLn: LnKg, parameters: Parameters): LnKg {
  return (
    straightLn +
    group.carriedLn * Math.exp(parameters.lnTiring) -
    (group.equipment === null ? 0 : parameters[group.equipment]) -
    (group.platform ? parameters.platform : 0)
  );
}

/** A sort of bar speed that may have been measured. */
export interface SpeedSeen {
  told: 'fastestMps' | 'peakMps' | 'lastMps';
  /** By so much it errs more than a mean speed. */
  factor: number;
  /** What is expected, over the surplus before the first rep of `made`. */
  over: (table: ReadTable, made: number) => Float64Array;
  /** The same at one surplus, for who needs few of them and would tabulate in vain. */
  at: (table: ReadTable, made: number, surplus: LnRatio) => number;
}

export const speedsSeen: readonly SpeedSeen[] = [
  {
    told: 'fastestMps',
    factor: 1,
    over: ({ speedMps }) => speedMps,
    at: ({ speedMps }, _, surplus) => atSurplus(speedMps, surplus),
  },
  {
    told: 'peakMps',
    factor: PEAK_FACTOR,
    over: (table) => table.peakMps(),
    at: (table, _, surplus) => atSurplus(table.peakMps(), surplus),
  },
  {
    told: 'lastMps',
    factor: LAST_FACTOR,
    over: (table, made) => table.lastMps(made),
    at: (table, made, surplus) => atSurplus(table.speedMps, table.surplusAtRep(surplus, made)),
  },
];

/** Standard deviation of the mean of `count` measured speeds. */
export function speedSeenSd({ factor }: SpeedSeen, count: number): number {
  return factor * speedSdMps(count);
}

/** An answer's own error, the greater the more reps were left. */
export interface AnswerError {
  sdReps: number;
  sdPerRepLeft: number;
}

/** Reps made and left together, as `worth` answers tell them. */
export interface RepsSeen extends AnswerError {
  reps: number;
  worth: number;
}

/** What lifters say was left. */
export const saidLeft: AnswerError = { sdReps: RESERVE_SD_REPS, sdPerRepLeft: RESERVE_SD_PER_REP };

/** Standard deviation of one answer when `left` reps are truly left. */
export function answerSd({ sdReps, sdPerRepLeft }: AnswerError, left: number): number {
  return sdReps + sdPerRepLeft * Math.max(0, left);
}

/** What was said of reps left; null: nothing. */
export function saidReps({ made, reserve }: EffortGroup): RepsSeen | null {
  if (reserve.count === 0) return null;
  const { sdReps, sdPerRepLeft } = saidLeft;
  return { reps: made + reserve.mean + RESERVE_UNSAID_REPS, worth: reserve.count, sdReps, sdPerRepLeft };
}

/** What the top of a work-up of few reps tells of reps left; null: nothing. */
export function topReps(group: EffortGroup): RepsSeen | null {
  const { made, topShare } = group;
  if (!(topShare > 0) || isOfSeveral(group)) return null;
  return { reps: made + LEFT_REPS, worth: topShare, sdReps: LEFT_SD_REPS, sdPerRepLeft: 0 };
}

/** The surplus is what so many reps need, within `sdLn` for one answer. */
export interface KeptSeen {
  reps: number;
  worth: number;
  sdLn: LnRatio;
}

/** What the top of a work-up of several reps tells; null: nothing. */
export function keptSeen(group: EffortGroup): KeptSeen | null {
  if (!(group.topShare > 0 && isOfSeveral(group))) return null;
  return { reps: group.made + KEPT_REPS, worth: group.topShare, sdLn: KEPT_SD_LN };
}
