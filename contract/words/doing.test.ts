import { expect, test } from 'vitest';
import { remainingText } from './doing.ts';

test('the rest takes as long for each part as those that are done, and nothing is said before a third is done', () => {
  expect(remainingText({ done: 3, total: 10 }, 6)).toBe('');
  // Two seconds a part, six parts to go.
  expect(remainingText({ done: 4, total: 10 }, 8)).toBe('about 10 s more');
  expect(remainingText({ done: 7, total: 10 }, 14)).toBe('about 6 s more');
  expect(remainingText({ done: 5, total: 10 }, 40)).toBe('about 40 s more');
  expect(remainingText({ done: 1, total: 3 }, 60)).toBe('about 2 min more');
  expect(remainingText({ done: 9, total: 10 }, 3)).toBe('about a second more');
});

test('work that is done, or that has not said how much it is, is told no rest', () => {
  expect(remainingText({ done: 0, total: 0 }, 9)).toBe('');
  expect(remainingText({ done: 8, total: 8 }, 9)).toBe('');
});
