import type { Lift } from '../lifter/populationShape.ts';

/**
 * How strength falls with effort and comes back in rest. The k-th rep of a set, of effort e (repEffort.ts), lowers ln S within
 * the set by `perSecond e repCost(k, bend)`. By its end `perSecond e` of each rep is missing; a share `fastShare` of that comes back with
 * the time constant `fastS`, the rest with `slowS`.
 */
export interface Tiring {
  /** ln strength lost per second of full effort. */
  perSecond: number;
  /** Above nought each further rep of a set costs more than those before it, below nought less. */
  bend: number;
  /** Time that the way down takes (s). */
  loweringS: number;
  fastShare: number;
  fastS: number;
  slowS: number;
}

/**
 * Half-times of the two parts in which phosphocreatine comes back after exercise: 22 s and at least 170 s (Harris et
 * al. 1976, Pflugers Arch 367:137; from memory). Power comes back in parallel with it (Bogdanis et al.
 * 1995, J Physiol 482:467, abstract).
 */
const FAST_HALF_S = 22;
const SLOW_HALF_S = 170;
/**
 * Judgement: by it four sets to failure lose about as many reps to short rests as were counted in the
 * squat and the bench press (Willardson & Burkett 2005; core/checks/repMaximum.test.ts).
 */
const FAST_SHARE = 0.85;
/** A controlled way down that is not drawn out: assumption. */
const LOWERING_S = 1.2;

/**
 * Chosen so that the reps possible at a share of the maximum lie within the spread of the published rep-maximum
 * formulas from 1 to 10 reps, for squats and deadlifts of 2 to 3 body masses (core/checks/repMaximum.test.ts).
 */
const PER_SECOND: Record<Lift, number> = { squat: 0.0128, bench: 0.0172, deadlift: 0.0132 };

/** A lifter's tiring in a lift before any set of theirs has told it. */
export function tiringOf(lift: Lift): Tiring {
  return {
    perSecond: PER_SECOND[lift],
    bend: 0,
    loweringS: LOWERING_S,
    fastShare: FAST_SHARE,
    fastS: FAST_HALF_S / Math.LN2,
    slowS: SLOW_HALF_S / Math.LN2,
  };
}
