import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

const NEWTON_PER_KG = 9.80665;
const NOISE_SHARE = 0.01;
const STEP_KG = 0.1;

/**
 * What an invented coach reads on a hanging scale for a true force: noise of 1 % (a seeded generator, so that
 * the club is the same on every machine), rounded to the scale's 0.1 kg, as force in N.
 */
export function readScale(trueN: number, seed: number): number {
  const readKg = (trueN * (1 + NOISE_SHARE * bell(seed))) / NEWTON_PER_KG;
  return Number((Math.round(readKg / STEP_KG) * STEP_KG * NEWTON_PER_KG).toFixed(3));
}

/** A bell-shaped number of mean 0 and variance 1: twelve uniform numbers added, less six. */
export function bell(seed: number): number {
  const generator = xoroshiro128plus(seed);
  let sum = -6;
  for (let i = 0; i < 12; i += 1) sum += uniformFloat64(generator);
  return sum;
}
