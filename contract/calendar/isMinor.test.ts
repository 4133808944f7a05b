import { expect, test } from 'vitest';
import { ageOn } from './ageOn.ts';
import { isMinor } from './isMinor.ts';

test('a year is full on the birthday, not a day before', () => {
  expect(ageOn('2010-06-15', '2026-06-14')).toBe(15);
  expect(ageOn('2010-06-15', '2026-06-15')).toBe(16);
});

test('a lifter is a minor up to the day before turning eighteen', () => {
  expect(isMinor('2008-11-26', '2026-11-25')).toBe(true);
  expect(isMinor('2008-11-25', '2026-11-25')).toBe(false);
});

test('who was born on a leap day turns eighteen on the first of March of a common year', () => {
  expect(isMinor('2008-02-29', '2026-02-28')).toBe(true);
  expect(isMinor('2008-02-29', '2026-03-01')).toBe(false);
});

test('without a birth date nobody is called a minor', () => {
  expect(isMinor(null, '2026-11-25')).toBe(false);
});
