import { expect, test } from 'vitest';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { alikeWords, sessionWords } from './alikeWords.ts';

const set = (barKg: number, reps: number, made = reps) => ({
  ...loggedSquat(`${barKg} ${reps} ${made}`, '2026-06-01', barKg),
  reps,
  made,
});

test('alike sets are one line, and what was not made is told set by set', () => {
  expect(
    alikeWords(
      Array.from({ length: 8 }, () => set(67.5, 3)),
      'kg',
    ),
  ).toBe('8 × 3 at 67.5 kg');
  expect(alikeWords([set(60, 8, 7), set(60, 8, 5)], 'kg')).toBe('2 × 8 at 60 kg, made 7, 5');
  expect(alikeWords([set(60, 8)], 'kg')).toBe('60 kg, 8 reps');
  // NIST SP 811: 0.45359237 kg a pound, so that 102.06 kg are 225 lb.
  expect(alikeWords([set(102.06, 1), set(102.06, 1)], 'lb')).toBe('2 × 1 at 225 lb');
});

test('a way up to the top is said in one breath, unless something was missed on it', () => {
  expect(sessionWords([set(87.5, 1), set(95, 1), set(100, 1)], 'kg')).toBe('singles at 87.5, 95, 100 kg');
  expect(sessionWords([set(60, 5), set(80, 5)], 'kg')).toBe('5 reps at 60, 80 kg');
  expect(sessionWords([set(70, 1), set(75, 1, 0)], 'kg')).toBe('70 kg, a single; 75 kg, missed');
});
