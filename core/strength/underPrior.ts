import { weightsOfLn } from '../numeric/weightsOfLn.ts';
import type { StrengthPosterior } from './estimateStrength.ts';
import type { Prior } from './parameters.ts';
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
    active.reduce((sum, name) => {
      const offBefore = (parameters[name] - before.mean[name]) / before.sd[name];
      const offNow = (parameters[name] - prior.mean[name]) / prior.sd[name];
      return sum + 0.5 * (offBefore ** 2 - offNow ** 2);
    }, Math.log(weight)),
  );
  return { ...reweighed(posterior, weightsOfLn(lnWeights)), prior };
}
