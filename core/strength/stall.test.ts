import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalQuantile } from '../numeric/normal.ts';
import { risesOf, stallOf, WORTH_LN } from './stall.ts';

/** Courses of `weeks` whose change is normal with this middle and spread, by evenly spaced quantiles. */
function courses(weeks: number, middle: number, sd: number, count = 2000): number[][] {
  return Array.from({ length: count }, (_, i) => {
    const change = middle + sd * normalQuantile((i + 0.5) / count);
    return Array.from({ length: weeks + 1 }, (_, week) => 5 + (change * week) / weeks);
  });
}

test('the probability of a rise and its interval are those of the normal distribution', () => {
  // Upper tail beyond one standard deviation 0.15866, 80 % within 1.28155 (tables of the normal distribution).
  const [rise] = risesOf(courses(12, 0, WORTH_LN), [12]);
  expect(rise!.probability).toBeCloseTo(0.15866, 3);
  expect(rise!.median).toBeCloseTo(0, 6);
  expect(rise!.high80).toBeCloseTo(1.28155 * WORTH_LN, 4);
  expect(rise!.low80).toBeCloseTo(-1.28155 * WORTH_LN, 4);
});

test('a flat lifter whose numbers are sure has stalled; one whose numbers are not is passed over in silence', () => {
  expect(stallOf(risesOf(courses(12, 0, 0.009), [12]))?.weeks).toBe(12);
  expect(stallOf(risesOf(courses(12, 0, 0.04), [12]))).toBeNull();
});

test('a fall that is not sure is no stall either: the interval must be narrow', () => {
  const [rise] = risesOf(courses(8, -0.05, 0.05), [8]);
  expect(rise!.probability).toBeLessThan(0.2);
  expect(stallOf([rise!])).toBeNull();
});

test('a lifter who rose by as much as not is never called stalled', () => {
  fc.assert(
    fc.property(
      fc.double({ min: WORTH_LN * 1.05, max: 0.3, noNaN: true }),
      fc.double({ min: 0.0001, max: 0.2, noNaN: true }),
      (middle, sd) => {
        expect(stallOf(risesOf(courses(8, middle, sd, 200), [8]))).toBeNull();
      },
    ),
  );
});

test('a higher course is never less of a rise', () => {
  const change = fc.double({ min: -0.1, max: 0.1, noNaN: true });
  fc.assert(
    fc.property(fc.array(change, { minLength: 5, maxLength: 40 }), change, (changes, more) => {
      const of = (add: number) =>
        risesOf(
          changes.map((ln) => [0, ln + add]),
          [1],
        )[0]!.probability;
      expect(of(Math.abs(more))).toBeGreaterThanOrEqual(of(0));
    }),
  );
});

test('the longest flat stretch is told, and weeks before the first set are not', () => {
  const flat = courses(16, 0, 0.005);
  expect(stallOf(risesOf(flat, [4, 8, 12, 26]))?.weeks).toBe(12);
  const roseBefore = flat.map((course) => [course[0]! - 0.1, ...course.slice(5)]);
  expect(stallOf(risesOf(roseBefore, [8, 12]))?.weeks).toBe(8);
});

test('four flat weeks are no stall, however sure', () => {
  expect(stallOf(risesOf(courses(8, 0, 0.001), [4]))).toBeNull();
});

test('a stall is a rise above 1 % that is less likely than 0.2, over eight weeks or more, known to 6 %', () => {
  const of = (middle: number, sd: number, weeks = 8) => stallOf(risesOf(courses(weeks, middle, sd), [weeks]));
  // As much above 1 % as below: one half.
  expect(risesOf(courses(8, 0.01, 0.004), [8])[0]!.probability).toBeCloseTo(0.5, 3);
  // Tables of the normal distribution: beyond 0.875 standard deviations 0.191, beyond 0.8 of them 0.212.
  expect(of(0.01 - 0.875 * 0.02, 0.02)).not.toBeNull();
  expect(of(0.01 - 0.8 * 0.02, 0.02)).toBeNull();
  // 80 % lie within 1.2816 standard deviations either way: 2.3 % of them make 5.9 %, 2.4 % make 6.2 %.
  expect(of(-0.05, 0.023)).not.toBeNull();
  expect(of(-0.05, 0.024)).toBeNull();
  expect(of(-0.05, 0.01, 7)).toBeNull();
});
