import { ownRoom } from '../numeric/room.ts';
import { stillShaken } from './change.ts';
import type { Particle, StrengthPosterior } from './estimateStrength.ts';
import { convolve, type Lattice, STEP_LN, sampled } from './lattice.ts';

/**
 * By so much (standard deviation of ln strength) the model itself may be off about a lifter, however long the log: no lifter is
 * made quite as an equation of motion has it, and more sets of the same kind do not show it (Kennedy & O'Hagan 2001, J R Stat
 * Soc B 63:425, on a model's own error). Where strength lately fell it is off by more: how deep a fall goes, and how it shows, is
 * known least. Judgements, from lifters simulated by two other models (docs/calibration.md).
 */
export const MODEL_SD_LN = 0.008;
export const SHAKEN_SD_LN = 0.035;

/** Answers as they are told to anybody: beside what the log leaves open of strength, the model's own error. */
export function asTold({
  particles,
  sessions,
  onDay,
}: Pick<StrengthPosterior, 'particles' | 'sessions' | 'onDay'>): Particle[] {
  const weeks = (onDay - (sessions[sessions.length - 1]?.day ?? onDay)) / 7;
  return particles.map((particle) => ({
    ...particle,
    strength: withModelError(particle.strength, stillShaken(particle.newest.shaken, weeks)),
  }));
}

/** The same for strength of any day; `shaken`: the probability that it lately fell. */
export function withModelError(strength: Lattice, shaken: number): Lattice {
  const weights = asEver.map((weight, i) => (1 - shaken) * weight + shaken * afterFall[i]!);
  return convolve(strength, { first: -RADIUS, weights }, ownRoom);
}

const RADIUS = Math.ceil((4 * SHAKEN_SD_LN) / STEP_LN);
const asEver = errorOf(MODEL_SD_LN);
const afterFall = errorOf(SHAKEN_SD_LN);

function errorOf(sdLn: number): Float64Array {
  const { weights } = sampled(-RADIUS, 2 * RADIUS + 1, (i) =>
    Math.exp(-0.5 * (((i - RADIUS) * STEP_LN) / sdLn) ** 2),
  );
  return weights;
}
