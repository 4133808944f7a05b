import { expect, test } from 'vitest';
import { slippedBars } from './slippedBars.ts';

/** Exact: NIST SP 811. */
const KG_PER_LB = 0.45359237;
const inPounds = (kg: number) => kg / KG_PER_LB;
const pounds = (...sets: [day: number, barKg: number][]) =>
  slippedBars(
    { looksLike: 'pounds', sets: sets.map((_, i) => i) },
    sets.map(([day, barKg]) => ({ day, barKg })),
  );

test('on a day by itself one bar in pounds leaves the others as they are, wherever it stands in the day', () => {
  expect(pounds([5, 70], [5, inPounds(65)], [5, 72.5], [5, 75])).toEqual({
    slipped: [1],
    besides: [0, 2, 3],
  });
});

test('a day that is all in pounds is slipped whole, and so is each day of a run', () => {
  const ramp = [60, 80, 95].map((kg): [number, number] => [5, inPounds(kg)]);
  expect(pounds(...ramp)).toEqual({ slipped: [0, 1, 2], besides: [] });
  const emptyBar: [number, number] = [5, inPounds(20)];
  expect(pounds(emptyBar, ...ramp, [12, inPounds(100)]).besides).toEqual([]);
  expect(pounds(emptyBar, ...ramp, [40, inPounds(100)]).besides).toEqual([0]);
});

test('a nought too many was found set by set', () => {
  const sets = [
    { day: 5, barKg: 1000 },
    { day: 5, barKg: 100 },
  ];
  expect(slippedBars({ looksLike: 'tenfold', sets: [0, 1] }, sets)).toEqual({ slipped: [0, 1], besides: [] });
});
