import { expect, test } from 'vitest';
import { populationPrior } from '#core/strength/parameters.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import { askedLifter, heldCurveOf, maxBarOf, repsOf } from './askDraws.ts';

const straight: Rigging = {
  load: {
    bands: [],
    hungBands: [],
    chains: [],
    bottomM: 0.9,
    lockoutM: 1.5,
    gravityMps2: 9.81,
    path: [],
  },
  start: 'free',
  range: { fromM: 0.9, toM: 1.5 },
};
const bodyMassKg = 80;
/** 0.88 of the body rises with a squat (docs/model.md). */
const movedKg = 0.88 * bodyMassKg;

/** Draws of lifters who squat these bars, all else as is usual. */
function drawsOf(barsKg: readonly number[], change: Record<string, number> = {}) {
  const { mean } = populationPrior('squat');
  return barsKg.map((barKg) => ({ ...mean, lnTotal: Math.log(barKg + movedKg), ...change }));
}
const bars = Array.from({ length: 61 }, (_, i) => 170 + i);
const lifter = askedLifter({ lift: 'squat', draws: drawsOf(bars), bodyMassKg }, straight);

test('asked for the straight lift itself, the draws give back the bars that they stand for', () => {
  const max = maxBarOf(lifter, straight, 'raw');
  expect(Math.abs(max!.median / 200 - 1)).toBeLessThan(0.01);
  // Of bars spread evenly from 170 to 230 kg, 80 % lie between 176 and 224.
  expect(Math.abs(max!.low80 / 176 - 1)).toBeLessThan(0.015);
  expect(Math.abs(max!.high80 / 224 - 1)).toBeLessThan(0.015);
});

test('wraps raise bar and lifter together by what was learned of them', () => {
  const { wraps } = populationPrior('squat').mean;
  const raw = maxBarOf(lifter, straight, 'raw')!;
  const wrapped = maxBarOf(lifter, straight, 'wraps')!;
  const factor = (wrapped.median + movedKg) / (raw.median + movedKg);
  expect(factor).toBeCloseTo(Math.exp(wraps), 2);
});

test('from pins half way up more goes up than from the bottom, and chains take something off the bar', () => {
  const raw = maxBarOf(lifter, straight, 'raw')!;
  const high = maxBarOf(
    lifter,
    { ...straight, start: 'pins', load: { ...straight.load, bottomM: 1.3 } },
    'raw',
  )!;
  expect(high.median).toBeGreaterThan(raw.median);
  const chains = [{ massPerMetreKg: 8, lengthM: 1.6, attachBelowBarM: 0, count: 4 }];
  const chained = maxBarOf(lifter, { ...straight, load: { ...straight.load, chains } }, 'raw')!;
  expect(chained.median).toBeLessThan(raw.median);
});

test('what is held still rises from bottom to lockout and is more for every stronger answer', () => {
  const curve = heldCurveOf(lifter, 9);
  expect(curve[0]!.zM).toBe(0.9);
  expect(curve.at(-1)!.held.median).toBeGreaterThan(curve[0]!.held.median);
  for (const { held } of curve) {
    expect(held.low95).toBeLessThan(held.low80);
    expect(held.low80).toBeLessThan(held.median);
    expect(held.median).toBeLessThan(held.high80);
  }
});

test('a lighter bar allows more reps, and a lifter who tires less makes more of them', () => {
  const [at90, at80] = repsOf(lifter, [0.9, 0.8]);
  expect(at80!.median).toBeGreaterThan(at90!.median);
  const tireless = askedLifter(
    { lift: 'squat', draws: drawsOf(bars.slice(20, 40), { lnTiring: -0.7 }), bodyMassKg },
    straight,
  );
  expect(repsOf(tireless, [0.8])[0]!.median).toBeGreaterThan(at80!.median);
});
