import { expect, test } from 'vitest';
import { normalCdf } from '../numeric/normal.ts';
import type { Draw } from '../strength/Draw.ts';
import { openDraws } from '../strength/openDraws.ts';
import { DAY_SD, parameterNames, populationPrior, WEEK_SD } from '../strength/parameters.ts';
import { coverage, transformBins } from './censoredScore.ts';
import { brierScore, chanceBins } from './chanceScore.ts';
import { maximumAhead } from './maximumAhead.ts';
import { meetDay } from './meetDay.ts';

const { mean } = populationPrior('squat');
const draw: Draw = { ...mean, lnTotal: Math.log(260), platform: 0, weekGain: 0.002 };
const raw = { equipment: 'raw', movedBodyKg: 60, weeks: 0, taperLn: 0 } as const;

/** Standard deviation of ln total mass; day form, set luck and drift independent. */
const ofDay = (weeks: number, times: number) => Math.hypot(times * DAY_SD, 0.012, WEEK_SD * Math.sqrt(weeks));

test('a single draw is the closed form: ordinary days and bad ones, drift growing with the square root of weeks', () => {
  for (const weeks of [0, 4, 16]) {
    const day = meetDay([draw], { ...raw, weeks });
    for (const barKg of [185, 195, 200, 205, 215]) {
      const spare = Math.log(260) + 0.002 * weeks - Math.log(barKg + 60);
      const good = normalCdf(spare / ofDay(weeks, 1));
      const bad = normalCdf((spare - 1.5 * DAY_SD) / ofDay(weeks, 2));
      expect(day.chanceAt(barKg)).toBeCloseTo(0.94 * good + 0.06 * bad, 10);
    }
  }
});

const middle = (change: Partial<Draw>, asked: Partial<Parameters<typeof meetDay>[1]> = {}) =>
  meetDay([{ ...draw, ...change }], { ...raw, ...asked }).barAt(0.5) + raw.movedBodyKg;

test('equipment, platform and taper multiply the total mass, so that each moves the middle by its own share', () => {
  const plain = middle({});
  expect(middle({ platform: 0.03 }) / plain).toBeCloseTo(Math.exp(0.03), 8);
  expect(middle({}, { taperLn: Math.log(1.01) }) / plain).toBeCloseTo(1.01, 8);
  expect(middle({ singlePly: 0.2 }, { equipment: 'single-ply' }) / plain).toBeCloseTo(Math.exp(0.2), 8);
  expect(middle({ singlePly: 0.2 })).toBeCloseTo(plain, 8);
});

test('the bar of a probability is where the chance is what is left of it', () => {
  const day = meetDay([draw, { ...draw, lnTotal: Math.log(240) }], { ...raw, weeks: 3 });
  for (const share of [0.025, 0.1, 0.5, 0.9, 0.975])
    expect(day.chanceAt(day.barAt(share))).toBeCloseTo(1 - share, 8);
});

test('the maximum ahead of one answer is lognormal: the gain of each week in the middle, the spread of the drift about it', () => {
  // 1.2816 standard deviations hold the middle 80 % of a normal.
  for (const weeks of [0, 9, 36]) {
    const barAt = maximumAhead([{ ...draw, platform: 0.03, singlePly: 0.2 }], {
      equipment: 'single-ply',
      movedBodyKg: 60,
      weeks,
    });
    const middle = 260 * Math.exp(0.2 + 0.002 * weeks);
    expect(barAt(0.5) + 60).toBeCloseTo(middle, 6);
    for (const [probability, z] of [
      [0.1, -1.2816],
      [0.9, 1.2816],
    ] as const)
      expect(barAt(probability) + 60).toBeCloseTo(middle * Math.exp(z * WEEK_SD * Math.sqrt(weeks)), 2);
  }
});

test('the bar of a probability is found where draws lie far apart, and is none where the body alone is too heavy', () => {
  const apart = meetDay(
    [100, 400].map((totalKg) => ({ ...draw, lnTotal: Math.log(totalKg) })),
    raw,
  );
  for (const share of [0.025, 0.975]) expect(apart.chanceAt(apart.barAt(share))).toBeCloseTo(1 - share, 8);
  // Over both answers the chance is the mean of what each gives.
  const [low, high] = [100, 400].map((totalKg) => meetDay([{ ...draw, lnTotal: Math.log(totalKg) }], raw));
  for (const barKg of [40, 140, 340])
    expect(apart.chanceAt(barKg)).toBeCloseTo((low!.chanceAt(barKg) + high!.chanceAt(barKg)) / 2, 12);
  expect(meetDay([{ ...draw, lnTotal: Math.log(50) }], raw).barAt(0.5)).toBe(0);
});

test('so is the maximum ahead: of two answers far apart a quarter lies below the middle of the lower, three quarters below that of the higher', () => {
  const asked = { equipment: 'raw', movedBodyKg: 60, weeks: 9 } as const;
  const barAt = maximumAhead(
    [100, 400].map((totalKg) => ({ ...draw, lnTotal: Math.log(totalKg) })),
    asked,
  );
  for (const [share, totalKg] of [
    [0.25, 100],
    [0.75, 400],
  ] as const)
    expect(barAt(share) + 60).toBeCloseTo(totalKg * Math.exp(0.002 * 9), 5);
  // Today nothing has drifted: a step at each answer.
  const today = maximumAhead(
    [100, 200, 400].map((totalKg) => ({ ...draw, lnTotal: Math.log(totalKg) })),
    { ...asked, weeks: 0 },
  );
  for (const [share, totalKg] of [
    [0.2, 100],
    [0.5, 200],
    [0.8, 400],
  ] as const)
    expect(today(share) + 60).toBeCloseTo(totalKg, 5);
  expect(maximumAhead([{ ...draw, lnTotal: Math.log(50) }], asked)(0.5)).toBe(0);
});

test('a parameter that no set told of gets the spread it had before; what was learned stays', () => {
  const prior = populationPrior('squat');
  const draws = Array.from({ length: 400 }, () => draw);
  const opened = openDraws(
    draws,
    parameterNames.filter((name) => name !== 'platform'),
    prior,
  ).map(({ platform }) => platform);
  const middle = opened.reduce((sum, x) => sum + x, 0) / 400;
  const sd = Math.sqrt(opened.reduce((sum, x) => sum + (x - middle) ** 2, 0) / 400);
  expect(middle).toBeCloseTo(prior.mean.platform, 3);
  expect(sd / prior.sd.platform).toBeGreaterThan(0.97);
  expect(sd / prior.sd.platform).toBeLessThan(1.03);
  expect(openDraws(draws, parameterNames, prior)).toEqual(draws);
});

/** Truths spread as the forecasts say, of each only two bounds are seen. */
const bounds = [0, 0.07, 0.31, 0.5, 0.62, 0.88, 1];
const censored = Array.from({ length: 10_000 }, (_, i) => (i + 0.5) / 10_000).map((truth) => {
  const at = bounds.findLastIndex((bound) => bound <= truth);
  return { low: bounds[at]!, high: bounds[at + 1]! };
});

test('right forecasts hold their share, however roughly the truth is seen', () => {
  for (const share of [0.5, 0.8, 0.95]) {
    const { held, least, most } = coverage(censored, share);
    expect(held).toBeCloseTo(share, 3);
    expect(least).toBeLessThanOrEqual(held);
    expect(most).toBeGreaterThanOrEqual(held);
  }
  for (const fifth of transformBins(censored, 5)) expect(fifth).toBeCloseTo(0.2, 3);
});

test('a truth within the interval, without it, and one that may be either', () => {
  expect(coverage([{ low: 0.2, high: 0.6 }], 0.5)).toMatchObject({ held: expect.closeTo(35 / 40, 8) });
  expect(coverage([{ low: 0.98, high: 1 }], 0.95).most).toBe(0);
  expect(coverage([{ low: 0.98, high: 1 }], 0.95).held).toBe(0);
  expect(coverage([{ low: 0.4, high: 1 }], 0.8)).toMatchObject({ least: 0, most: 1 });
});

const binOf = (at: number) => transformBins([{ low: at, high: at }], 4);

test('a truth that is known to the point lies in one bin alone, and bounds that are just those of the interval are within it', () => {
  expect([0, 0.3, 0.5, 1].map(binOf)).toEqual([
    [1, 0, 0, 0],
    [0, 1, 0, 0],
    [0, 0, 1, 0],
    [0, 0, 0, 1],
  ]);
  expect(coverage([{ low: 0.25, high: 0.75 }], 0.5)).toMatchObject({ held: 1, least: 1, most: 1 });
  for (const beside of [
    { low: 0, high: 0.25 },
    { low: 0.75, high: 1 },
  ])
    expect(coverage([beside], 0.5)).toMatchObject({ held: 0, least: 0, most: 1 });
  expect(coverage([], 0.5)).toMatchObject({ held: 0, least: 0, most: 0 });
});

test('chances are counted where they fall, and the score is nought only for a prophet', () => {
  const tried = [
    { chance: 0.95, made: true },
    { chance: 0.9, made: false },
    { chance: 0.2, made: false },
  ];
  const bins = chanceBins(tried);
  // They go on from one another, from nought to one.
  const ends = [...bins.map(({ from }) => from), 1];
  expect(ends.toSorted((a, b) => a - b)).toEqual(ends);
  expect([0, ...bins.map(({ to }) => to)]).toEqual(ends);
  // What lies just between two counts in the upper one, and what is certain in the last.
  const edges = chanceBins(ends.map((chance) => ({ chance, made: true })));
  expect(edges.map(({ count }) => count)).toEqual(bins.map((_, i) => (i < bins.length - 1 ? 1 : 2)));
  const last = bins.at(-1)!;
  expect([last.count, last.made]).toEqual([2, 1]);
  expect(last.expected).toBeCloseTo(1.85, 12);
  expect(brierScore(tried)).toBeCloseTo((0.0025 + 0.81 + 0.04) / 3, 12);
  expect(brierScore(tried.map(({ made }) => ({ made, chance: made ? 1 : 0 })))).toBe(0);
  expect(brierScore([])).toBeNull();
});
