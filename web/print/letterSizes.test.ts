import { expect, test } from 'vitest';
import { barFigureMm, discFigureMm, figureHeightMm, leastReadPt, wallDistanceMm } from './letterSizes.ts';

// Peters and Adams 1959 as handbooks tabulate it, in inches and from memory: H = 0.0022 D + 0.06 in good light, 0.135 where an
// error is grave; 28 inches away 0.12 and 0.20.
test('heights of figures are those of the published formula at the distance of a panel', () => {
  expect(figureHeightMm(28 * 25.4, false) / 25.4).toBeCloseTo(0.12, 2);
  expect(figureHeightMm(28 * 25.4, true) / 25.4).toBeCloseTo(0.2, 2);
});

test('bar and discs are seen under two and three times the least angle of an eye chart', () => {
  // A letter of normal sight takes 5 minutes of arc (Snellen).
  const leastMm = wallDistanceMm * Math.tan(((5 / 60) * Math.PI) / 180);
  for (const heightMm of [barFigureMm, discFigureMm]) expect(heightMm).toBeGreaterThan(2 * leastMm);
  expect(barFigureMm).toBeGreaterThan(3 * leastMm);
  expect(barFigureMm).toBeGreaterThan(discFigureMm);
});

test('what is read in the hand is as high as the formula asks half a metre away', () => {
  // A point is a 72nd of an inch; figures of the letters used are 0.686 of their size.
  expect(leastReadPt * (25.4 / 72) * 0.686).toBeGreaterThan(figureHeightMm(500, false));
});
