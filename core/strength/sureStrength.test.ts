import { expect, test } from 'vitest';
import { belowMiddleLn, GOOD_DAY_LN } from './sureStrength.ts';

// Quantiles of the normal distribution: 0.674490 at 0.75, 1.644854 at 0.95 (Abramowitz & Stegun 1964, table 26.5, from memory).
test('a lifter known to 10 % is gone by lower, by as many deviations as the chance asks, less what a day hides', () => {
  const beyondADayLn = Math.sqrt(0.1 ** 2 - 0.018 ** 2);
  expect(belowMiddleLn(0.1, 0.75)).toBeCloseTo(-0.67449 * beyondADayLn, 6);
  expect(belowMiddleLn(0.1, 0.95)).toBeCloseTo(-1.644854 * beyondADayLn, 6);
});

test('whoever is known as well as the form of a day allows is gone by in the middle, and so is everybody at a chance of one half', () => {
  expect(belowMiddleLn(0.015, 0.75)).toBeCloseTo(0, 12);
  expect(belowMiddleLn(0.3, 0.5)).toBeCloseTo(0, 12);
});

// 1.281552 at 0.9, of the same table; the form of a day differs by 1.8 % (docs/model.md).
test('the best of ten days is so much above an average one as nine days in ten stay below', () => {
  expect(GOOD_DAY_LN).toBeCloseTo(1.281552 * 0.018, 6);
});
