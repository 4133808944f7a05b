import { flattened } from '../numeric/importanceSample.ts';
import type { Weights } from '../numeric/weightsOfLn.ts';
import type { StrengthPosterior } from './estimateStrength.ts';

/** The same answers, counted otherwise. */
export function reweighed(posterior: StrengthPosterior, { weights, effective }: Weights): StrengthPosterior {
  const particles = posterior.particles.map((particle, i) => ({ ...particle, weight: weights[i]! }));
  return { ...posterior, particles, effective };
}

/** The same answers, their weights flattened until they are worth `wanted` equal ones: ranges grow wider or stay, none grows narrower. */
export function widened(posterior: StrengthPosterior, wanted: number): StrengthPosterior {
  const weights = Float64Array.from(posterior.particles, ({ weight }) => weight);
  return reweighed(posterior, flattened(weights, wanted));
}
