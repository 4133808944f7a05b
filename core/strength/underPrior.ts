import { weightsOfLn } from '../numeric/weightsOfLn.ts';
import type { StrengthPosterior } from './estimateStrength.ts';
import { lnPrior, type Prior } from './parameters.ts';
import { reweighed } from './reweighed.ts';

/**
 * What the same log says to somebody who believed `prior` of the parameters before it. The log itself is not read again:
 * every answer counts by how much likelier its parameters are under the one prior than under the other (importance
 * weights). Answers cannot be found where none were: `effective` tells how many are left, and where these are few the
 * estimate is to be made from the whole log.
 */
export function underPrior(posterior: StrengthPosterior, prior: Prior): StrengthPosterior {
  const { particles, active, prior: before } = posterior;
  const lnWeights = particles.map(({ parameters, weight }) =>
    active.reduce(
      (sum, name) => sum + lnPrior(prior, name, parameters[name]) - lnPrior(before, name, parameters[name]),
      Math.log(weight),
    ),
  );
  return { ...reweighed(posterior, weightsOfLn(lnWeights)), prior };
}
