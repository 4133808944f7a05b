import { expect, test } from 'vitest';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { endsOfSet } from './endsOfSet.ts';
import { expectedOfSet } from './expectedOfSet.ts';

const club = twoLifters();
const on = '2026-06-28';
const belief = (median: number) => ({
  median,
  low80: median - 3,
  high80: median + 3,
  low95: median - 5,
  high95: median + 5,
});
/** The shorter lifter, 52 kg, who squats 110 kg today and squatted 100 kg half a year before. */
const estimate = {
  on,
  bodyMassKg: 52,
  maxKg: belief(110),
  history: [
    { on: '2025-12-28', ...belief(100) },
    { on, ...belief(110) },
  ],
  // 0.88 of the body rises with a squat (docs/model.md).
  draws: Array.from({ length: 5 }, () => ({
    ...populationPrior('squat').mean,
    lnTotal: Math.log(110 + 0.88 * 52),
  })),
};
const squat = (barKg: number, doneOn = on) => loggedSquat(`${barKg} ${doneOn}`, doneOn, barKg);
const expected = (barKg: number, doneOn = on) => expectedOfSet(club, squat(barKg, doneOn), estimate)!;

test('straight weight is as heavy at the bottom as at lockout, and measured', () => {
  const ends = endsOfSet(club, squat(100))!;
  expect(ends.bottomKg).toBeCloseTo(100, 9);
  expect(ends.lockoutKg).toBeCloseTo(100, 9);
  expect(ends.known).toBe('measured');
});

test('a set with a pair that the club no longer has has no load and no expected speed', () => {
  const gone = loggedSquat('gone', on, 100, {
    with: { bands: [{ bandPairId: 'long gone', hookupId: 'long gone' }] },
  });
  expect(endsOfSet(club, gone)).toBeNull();
  expect(expectedOfSet(club, gone, estimate)).toBeNull();
});

test('the heavier the bar, the slower it is expected, and beyond the maximum not to go up', () => {
  const speeds = [60, 80, 100, 108].map((barKg) => expected(barKg));
  expect(speeds).toEqual(speeds.toSorted((a, b) => b - a));
  expect(Math.min(...speeds)).toBeGreaterThan(0);
  expect(expected(125)).toBe(0);
});

test('a set is judged by the strength of its own week: the same bar was slower when the lifter was weaker', () => {
  expect(expected(95, '2026-01-15')).toBeLessThan(expected(95));
  // Before the first point, the first one counts.
  expect(expected(95, '2025-06-01')).toBeCloseTo(expected(95, '2025-12-28'), 9);
  // 108 kg is below today's 110 kg and above what was 100 kg then.
  expect(expected(108, '2026-01-15')).toBe(0);
});
