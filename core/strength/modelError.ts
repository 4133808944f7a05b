import { ownRoom } from '../numeric/room.ts';
import { stillShaken } from './change.ts';
import type { Particle, StrengthPosterior } from './estimateStrength.ts';
import { convolve, type Lattice, STEP_LN, sampled } from './lattice.ts';
import type { EffortGroup, Session } from './sessions.ts';
import { isOfSeveral, tellsMore } from './workUps.ts';

/**
 * By so much (standard deviation of ln strength) the model itself may be off about a lifter, however long the log: no lifter is
 * made quite as an equation of motion has it, and more sets of the same kind do not show it (Kennedy & O'Hagan 2001, J R Stat
 * Soc B 63:425, on a model's own error). Where strength lately fell it is off by more: how deep a fall goes, and how it shows, is
 * known least; and where all that tells of it are sets of several reps, since lifters differ in how many reps a share of their
 * maximum allows by more than any one law of tiring has it. Judgements, from lifters simulated by two other models (docs/calibration.md).
 */
export const MODEL_SD_LN = 0.008;
export const SHAKEN_SD_LN = 0.045;
export const REPS_SD_LN = 0.03;

/** Answers as they are told to anybody: beside what the log leaves open of strength, the model's own error. */
export function asTold({
  particles,
  sessions,
  onDay,
}: Pick<StrengthPosterior, 'particles' | 'sessions' | 'onDay'>): Particle[] {
  const weeks = (onDay - (sessions[sessions.length - 1]?.day ?? onDay)) / 7;
  const error = modelErrorOf(sessions);
  return particles.map((particle) => ({
    ...particle,
    strength: withModelError(particle.strength, error, stillShaken(particle.newest.shaken, weeks)),
  }));
}

/** The model's own error of a log, while strength has not fallen lately: weights over steps of ln strength. */
export function modelErrorOf(sessions: readonly Session[]): Float64Array {
  return sessions.length > 0 && sessions.every(({ groups }) => groups.every(goesByRepsAlone))
    ? byRepsAlone
    : asEver;
}

/** The same for strength of any day; `shaken`: the probability that it lately fell. */
export function withModelError(strength: Lattice, error: Float64Array, shaken: number): Lattice {
  const weights = error.map((weight, i) => (1 - shaken) * weight + shaken * afterFall[i]!);
  return convolve(strength, { first: -RADIUS, weights }, ownRoom);
}

/** Sets of several reps, or light ones, of which nobody said how hard they were: nothing that tells of strength but by a law of tiring. */
function goesByRepsAlone(group: EffortGroup): boolean {
  return !tellsMore(group) && (isOfSeveral(group) || !(group.missed || group.topShare > 0));
}

const RADIUS = Math.ceil((4 * SHAKEN_SD_LN) / STEP_LN);
const asEver = errorOf(MODEL_SD_LN);
const afterFall = errorOf(SHAKEN_SD_LN);
const byRepsAlone = errorOf(REPS_SD_LN);

function errorOf(sdLn: number): Float64Array {
  const { weights } = sampled(-RADIUS, 2 * RADIUS + 1, (i) =>
    Math.exp(-0.5 * (((i - RADIUS) * STEP_LN) / sdLn) ** 2),
  );
  return weights;
}
