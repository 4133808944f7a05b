import { expect, it } from 'vitest';
import { parabolaPeak } from './parabolaPeak.ts';

const peakOf = (lnDensity: (x: number) => number, from: number, step: number) =>
  parabolaPeak(lnDensity, from, lnDensity(from), step);
const near = (value: number) => expect.closeTo(value, 9);

/** The density of a normal distribution about 3 with a standard deviation of 0.5, times e to the 7th. */
const normal = (x: number) => 7 - 0.5 * ((x - 3) / 0.5) ** 2;

it('finds mean, height and standard deviation of a normal density at once', () => {
  for (const from of [2.6, 3.4])
    expect(peakOf(normal, from, 0.3)).toEqual({ at: near(3), value: near(7), sd: near(0.5) });
  // No farther than two steps, either way; the density there is 0.8 standard deviations off.
  const off = 7 - 0.5 * 0.8 ** 2;
  expect(peakOf(normal, 2, 0.3)).toEqual({ at: near(2.6), value: near(off), sd: near(0.5) });
  expect(peakOf(normal, 4, 0.3)).toEqual({ at: near(3.4), value: near(off), sd: near(0.5) });
});

it('goes one step up where no peak is seen, and is no surer than a step', () => {
  expect(peakOf((x) => 2 * x, 1, 0.5)).toEqual({ at: near(1.5), value: near(3), sd: 0.5 });
  expect(peakOf((x) => -2 * x, 1, 0.5)).toEqual({ at: near(0.5), value: near(-1), sd: 0.5 });
  // x^2 / 4 bends up by half.
  expect(peakOf((x) => (x * x) / 4, 1, 0.5)).toEqual({ at: near(1.5), value: near(0.5625), sd: 0.5 });
});
