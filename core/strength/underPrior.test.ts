import { expect, test } from 'vitest';
import { longLog } from '../../studies/longLog.ts';
import { type Belief, beliefOfMixture } from './belief.ts';
import { estimateStrength, type StrengthPosterior } from './estimateStrength.ts';
import { type Prior, parameterNames, populationPrior } from './parameters.ts';
import { underPrior } from './underPrior.ts';

const lifter = longLog(3, 'squat', 120);
const estimateUnder = (prior: Prior) =>
  estimateStrength({ ...lifter, onDay: lifter.sets.at(-1)!.day, prior });
const population = populationPrior('squat');
const posterior = estimateUnder(population);

test('the prior that stood before changes nothing', () => {
  const again = underPrior(posterior, population);
  again.particles.forEach(({ weight }, i) => {
    expect(weight).toBeCloseTo(posterior.particles[i]!.weight, 12);
  });
  expect(again.effective).toBeCloseTo(posterior.effective, 6);
});

test.each([-0.3, 0.3])(
  'under the prior of a club alike and %f off it says what the whole log would',
  (off) => {
    const prior = { mean: { ...population.mean }, sd: { ...population.sd } };
    for (const name of parameterNames) {
      prior.mean[name] += off * population.sd[name];
      prior.sd[name] *= 0.8;
    }
    const told = lnTotalOf(underPrior(posterior, prior));
    const whole = lnTotalOf(estimateUnder(prior));
    // The log is of 120 sets: a few hundred answers tell the middle to a tenth of the width.
    expect(Math.abs(told.median - whole.median)).toBeLessThan(0.1 * widthOf(whole));
    expect(Math.abs(widthOf(told) / widthOf(whole) - 1)).toBeLessThan(0.2);
  },
);

function lnTotalOf({ particles }: StrengthPosterior): Belief {
  return beliefOfMixture(particles, (lnTotal) => lnTotal);
}

function widthOf({ low80, high80 }: Belief): number {
  return high80 - low80;
}
