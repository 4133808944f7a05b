import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builds, clubPrior, type LearnedShape } from './clubPrior.ts';
import { populationPrior } from './parameters.ts';

const population = populationPrior('squat');
const priorSd = population.sd.lnMaxSpeed;

/** A lifter whose log told a value with some error, under the population's prior or another mean: the conjugate normal posterior. */
function lifter(value: number, error: number, build = 0, priorMean = 0): LearnedShape {
  const sd = 1 / Math.sqrt(1 / error ** 2 + 1 / priorSd ** 2);
  const mean = sd * sd * (value / error ** 2 + priorMean / priorSd ** 2);
  return { build, learned: [{ name: 'lnMaxSpeed', mean, sd, priorMean, priorSd }] };
}

const buildsOf = (...kg: number[]) => builds(kg.map((bodyMassKg) => ({ bodyMassKg, statureM: 1.7 })));

describe('partial pooling over the club', () => {
  test('without lifters, or with lifters who tell nothing, the population comes back', () => {
    expect(clubPrior([], population)(0)).toEqual(population);
    const silent = Array.from({ length: 20 }, () => lifter(0.3, 50 * priorSd));
    expect(clubPrior(silent, population)(1)).toEqual(population);
  });

  test('many lifters who each tell a little are heard together', () => {
    // Each log is worth a quarter of the population's prior.
    const faint = Array.from({ length: 30 }, () => lifter(0.3, 2 * priorSd));
    expect(clubPrior(faint, population)(0).mean.lnMaxSpeed).toBeGreaterThan(0.05);
  });

  test('what a log told counts, and not what was believed before it', () => {
    for (const which of ['mean', 'sd'] as const)
      expect(believing(0.4)[which].lnMaxSpeed).toBeCloseTo(believing(0)[which].lnMaxSpeed, 12);
  });

  test('a population elsewhere with lifters as far from it moves what is expected by as much', () => {
    expect(movedBy(0.3) - movedBy(0)).toBeCloseTo(0.3, 12);
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

  // docs/model.md, "strength": the population counts for fifteen lifters. Judgement, no source: a club's middle lies 0.3 of the
  // population's spread off, each unit of build shifts it by as much, and the spread is never below 0.7 of the population's.
  test('ten lifters alike in all leave fifteen twenty-fifths of the population’s variance, and that of the middle', () => {
    const alike = Array.from({ length: 10 }, () => lifter(0, 1e-4));
    const within = 15 / 25;
    const ofMiddle = 1 / (1 / 0.3 ** 2 + 10 / within);
    const { sd } = clubPrior(alike, population)(0);
    expect(sd.lnMaxSpeed / priorSd).toBeCloseTo(Math.sqrt(within + ofMiddle), 4);
    const many = Array.from({ length: 300 }, () => lifter(0, 1e-4));
    expect(clubPrior(many, population)(0).sd.lnMaxSpeed / priorSd).toBeCloseTo(0.7, 9);
  });

  test('a shift with build is shrunk as far as the population’s share of it says', () => {
    const value = 0.2;
    const ten = Array.from({ length: 10 }, (_, i) => (i % 2 === 0 ? -1 : 1)).map((build) =>
      lifter(value * build, 1e-4, build),
    );
    // Slope b and variance v where both are at rest: b = value (10 / v) / (10 / v + 1 / 0.09), v = (15 + 10 (value - b)^2) / 25.
    let [variance, slope] = [priorSd ** 2, 0];
    for (let i = 0; i < 100; i++) {
      const told = 10 / variance;
      slope = (value * told) / (told + 1 / (0.3 * priorSd) ** 2);
      variance = (15 * priorSd ** 2 + 10 * (value - slope) ** 2) / 25;
    }
    const prior = clubPrior(ten, population);
    expect(prior(1).mean.lnMaxSpeed - prior(0).mean.lnMaxSpeed).toBeCloseTo(slope, 4);
  });

  test('middle and shift with build are the likeliest together, whatever builds the club has', () => {
    const lifters = fc.array(
      fc.record({
        build: fc.integer({ min: -20, max: 20 }).map((n) => n / 10),
        value: fc.integer({ min: -30, max: 60 }).map((n) => n / 100),
      }),
      { minLength: 3, maxLength: 12 },
    );
    fc.assert(
      fc.property(lifters, (club) => {
        const prior = clubPrior(
          club.map(({ build, value }) => lifter(value, 1e-4, build)),
          population,
        );
        const middle = prior(0).mean.lnMaxSpeed;
        const shift = prior(1).mean.lnMaxSpeed - middle;
        const off = club.map(({ build, value }) => ({ build, by: value - middle - shift * build }));
        // The population's spread counts for fifteen lifters; middle and shift have 0.3 of it. At the top all slopes are nought.
        const squares = off.reduce((sum, { by }) => sum + by ** 2, 0);
        const variance = (15 * priorSd ** 2 + squares) / (15 + club.length);
        const held = 1 / (0.3 * priorSd) ** 2;
        const pull = off.reduce((sum, { by }) => sum + by, 0) / variance - held * middle;
        const turn = off.reduce((sum, { build, by }) => sum + build * by, 0) / variance - held * shift;
        expect(Math.abs(pull) / held).toBeLessThan(1e-4);
        expect(Math.abs(turn) / held).toBeLessThan(1e-4);
      }),
    );
  });

  test('build counts in steps of 15 % of mass over stature squared, to two of them', () => {
    expect(buildsOf(80, 80 * Math.exp(0.3))).toEqual([expect.closeTo(-1, 9), expect.closeTo(1, 9)]);
    expect(buildsOf(50, 50, 50, 150).at(-1)).toBe(2);
    const tall = [1.7, 2].map((statureM) => ({ bodyMassKg: 80 * statureM ** 2, statureM }));
    expect(builds(tall)[1]).toBeCloseTo(0, 9);
  });
});

/** The club's prior where each lifter was believed to be there before. */
const believing = (priorMean: number) =>
  clubPrior(
    [0.1, 0.2, 0.3].map((value) => lifter(value, 0.5 * priorSd, 0, priorMean)),
    population,
  )(0);

/** What is expected of one of the club where population and lifters lie farther off by so much. */
const movedBy = (by: number) =>
  clubPrior(
    [0.1, 0.2, 0.4].map((value, i) => lifter(value + by, 0.5 * priorSd, i - 1)),
    { ...population, mean: { ...population.mean, lnMaxSpeed: by } },
  )(1).mean.lnMaxSpeed;
