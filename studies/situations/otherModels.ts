import type { Lift } from '#core/lifter/populationShape.ts';
import type { Chance } from '../simulateLifter.ts';

/**
 * One lifter in one lift who is not made as the estimate thinks: how many reps and how fast, by the bar's share of the
 * maximum bar. Nothing of it comes from an equation of motion.
 */
export interface OtherModel {
  /** Reps that can be made rested, any number from 1. */
  repsAt(share: number): number;
  /** Mean speed of the first rep (m/s). */
  speedAtMps(share: number): number;
}

export type ModelName = 'hyperbola' | 'power';
export const modelNames: readonly ModelName[] = ['hyperbola', 'power'];

/** Speed at the maximum and its spread between powerlifters (m/s): Helms et al. 2017, J Strength Cond Res 31:292. */
const AT_MAXIMUM: Record<Lift, readonly [number, number]> = {
  squat: [0.23, 0.05],
  bench: [0.1, 0.04],
  deadlift: [0.14, 0.05],
};
/**
 * How much faster half of the maximum goes (m/s): bench 0.93 less 0.16 (Gonzalez-Badillo & Sanchez-Medina 2010), squat about 1
 * less 0.3 (Sanchez-Medina et al. 2017), deadlift 0.6 (assumption); all from memory.
 */
const HALF_FASTER_MPS: Record<Lift, number> = { squat: 0.7, bench: 0.77, deadlift: 0.6 };
const QUICKNESS_SD_LN = 0.1;

export function drawOther(name: ModelName, lift: Lift, { normal }: Chance): OtherModel {
  const [mean, sd] = AT_MAXIMUM[lift];
  const slowestMps = Math.max(0.05, mean + sd * normal());
  const faster = HALF_FASTER_MPS[lift] * Math.exp(QUICKNESS_SD_LN * normal());
  return name === 'hyperbola' ? hyperbola(slowestMps, faster, normal()) : power(slowestMps, faster, normal());
}

/** Bend of the force-velocity hyperbola (Hill 1938; about 1 to 3 for movements of several joints, assumption). */
const BEND = 1.5;
/** Reps beyond the first by Epley 1985, made to give one rep at the maximum; people differ by a quarter (assumption). */
const EPLEY_REPS = 31;
const EPLEY_SD_LN = 0.25;

function hyperbola(slowestMps: number, faster: number, person: number): OtherModel {
  const reps = EPLEY_REPS * Math.exp(EPLEY_SD_LN * person);
  return {
    repsAt: (share) => Math.max(0, 1 + reps * (1 / share - 1)),
    speedAtMps: (share) => slowestMps + (faster * hyperbolaAt(share)) / hyperbolaAt(0.5),
  };
}

function hyperbolaAt(share: number): number {
  return Math.max(0, 1 - share) / (1 + share / BEND);
}

/** Weight for n reps = maximum x n^-exponent (the form of Lombardi 1989, whose exponent is 0.1). */
const EXPONENT = 0.115;
const EXPONENT_SD = 0.02;
/** Share of the speed gained that grows with the square of what is taken off the bar (assumption). */
const SQUARE_SHARE = 0.15;

function power(slowestMps: number, faster: number, person: number): OtherModel {
  const exponent = Math.max(0.06, EXPONENT + EXPONENT_SD * person);
  return {
    repsAt: (share) => share ** (-1 / exponent),
    speedAtMps: (share) => {
      const off = 2 * Math.max(0, 1 - share);
      return slowestMps + faster * ((1 - SQUARE_SHARE) * off + SQUARE_SHARE * off * off);
    },
  };
}
