import { expect, test } from 'vitest';
import { hasHeight, startText } from './liftWords.ts';

// Common practice, no source: a box, pins, boards, blocks and a deficit are told by their height, the rest by its name.
test('a start is told by its way, and by a height where it has one', () => {
  expect((['free', 'paused', 'box', 'pins'] as const).map(hasHeight)).toEqual([false, false, true, true]);
  expect(startText('bench', { way: 'free', heightM: null }, 'cm')).toBe('touch and go');
  expect(startText('bench', { way: 'paused', heightM: null }, 'cm')).toBe('paused');
  expect(startText('squat', { way: 'box', heightM: 0.36 }, 'cm')).toBe('box 36 cm');
});
