import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { normalQuantile } from '../numeric/normal.ts';
import { chanceInZone } from './chanceInZone.ts';

/** 0.03 m/s of one set and 0.025 of its day (docs/model.md, "strength"). */
const SD = Math.hypot(0.03, 0.025);

const at = (fromMps: number, toMps: number) => chanceInZone({ fromMps, toMps }, { mps: 0.8, perLnMps: 0 }, 0);

it('is what the table of the normal distribution gives where strength does not change the speed', () => {
  // Abramowitz & Stegun 1964, table 26.1: P(|Z| < 1) = 0.682689, P(|Z| < 2) = 0.954500, P(Z < 1) = 0.841345.
  expect(at(0.8 - SD, 0.8 + SD)).toBeCloseTo(0.682689, 6);
  expect(at(0.8 - 2 * SD, 0.8 + 2 * SD)).toBeCloseTo(0.9545, 6);
  expect(at(0, 0.8 + SD)).toBeCloseTo(0.841345, 6);
});

it('is the share of days in the zone when form, bad days and luck are gone through one by one', () => {
  // 0.018 from day to day, 0.012 from set to set, six days in a hundred 1.5 of them lower and twice as wide (docs/model.md).
  const [zone, expected] = [
    { fromMps: 0.78, toMps: 0.9 },
    { mps: 0.8, perLnMps: 1.5 },
  ];
  const steps = Array.from({ length: 400 }, (_, i) => normalQuantile((i + 0.5) / 400));
  const isInside = (form: number, luck: number) => {
    const mps = expected.mps + expected.perLnMps * form + luck;
    return mps > zone.fromMps && mps < zone.toMps ? 1 : 0;
  };
  const luckSd = Math.hypot(SD, expected.perLnMps * 0.012);
  let inside = 0;
  for (const day of steps)
    for (const luck of steps) {
      const ordinary = isInside(0.018 * day, luckSd * luck);
      inside += 0.94 * ordinary + 0.06 * isInside(-1.5 * 0.018 + 0.036 * day, luckSd * luck);
    }
  expect(chanceInZone(zone, expected, 0)).toBeCloseTo(inside / steps.length ** 2, 2);
});

it('is the less the less is known, for a speed in the middle', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.3, max: 1.5, noNaN: true }),
      fc.double({ min: 0.01, max: 0.3, noNaN: true }),
      fc.double({ min: 0.01, max: 0.3, noNaN: true }),
      (mps, halfMps, sdMps) => {
        const zone = { fromMps: mps - halfMps, toMps: mps + halfMps };
        const known = chanceInZone(zone, { mps, perLnMps: 0.6 }, 0);
        expect(chanceInZone(zone, { mps, perLnMps: 0.6 }, 0, sdMps)).toBeLessThan(known);
        expect(known).toBeLessThanOrEqual(1);
      },
    ),
  );
});
