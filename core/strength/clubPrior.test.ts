import { describe, expect, test } from 'vitest';
import { clubPrior, type LearnedShape } from './clubPrior.ts';
import { populationPrior } from './parameters.ts';

const population = populationPrior('squat');
const priorSd = population.sd.lnMaxSpeed;

/** A lifter whose log told a value with some error, under the population's prior: the conjugate normal posterior. */
function lifter(value: number, error: number, build = 0): LearnedShape {
  const sd = 1 / Math.sqrt(1 / error ** 2 + 1 / priorSd ** 2);
  return {
    build,
    learned: [{ name: 'lnMaxSpeed', mean: (sd * sd * value) / error ** 2, sd, priorMean: 0, priorSd }],
  };
}

describe('partial pooling over the club', () => {
  test('without lifters, or with lifters who tell nothing, the population comes back', () => {
    expect(clubPrior([], population)(0)).toEqual(population);
    const silent = Array.from({ length: 20 }, () => lifter(0.3, 50 * priorSd));
    expect(clubPrior(silent, population)(1)).toEqual(population);
  });

  test('a club of fast lifters expects a new one to be fast, and less spread than the population', () => {
    const fast = Array.from({ length: 30 }, (_, i) => lifter(0.2 + 0.01 * (i % 3), 0.01));
    const { mean, sd } = clubPrior(fast, population)(0);
    // The plain mean of the thirty is 0.21; the population, at 0, pulls it by less than a fifth.
    expect(mean.lnMaxSpeed).toBeGreaterThan(0.17);
    expect(mean.lnMaxSpeed).toBeLessThan(0.21);
    expect(sd.lnMaxSpeed).toBeLessThan(priorSd);
    expect(sd.lnMaxSpeed).toBeGreaterThanOrEqual(0.4 * priorSd);
  });

  test('one exact lifter pulls less than many', () => {
    const one = clubPrior([lifter(0.2, 0.01)], population)(0).mean.lnMaxSpeed;
    const many = clubPrior(
      Array.from({ length: 12 }, () => lifter(0.2, 0.01)),
      population,
    )(0).mean.lnMaxSpeed;
    expect(one).toBeGreaterThan(0);
    expect(one).toBeLessThan(many);
    expect(many).toBeLessThan(0.2);
  });

  test('what changes with build is expected to go on doing so', () => {
    const byBuild = [-2, -1, -0.5, 0, 0.5, 1, 2].flatMap((build) => [lifter(0.05 * build, 0.01, build)]);
    const prior = clubPrior([...byBuild, ...byBuild, ...byBuild], population);
    const shift = prior(1).mean.lnMaxSpeed - prior(0).mean.lnMaxSpeed;
    expect(shift).toBeGreaterThan(0.025);
    expect(shift).toBeLessThan(0.05);
  });
});
