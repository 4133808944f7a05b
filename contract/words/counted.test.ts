import { expect, it } from 'vitest';
import { counted } from './counted.ts';

// English grammar: the singular is for exactly one, nought takes the plural.
it('one of a thing is singular, none and several are plural, also where the plural is no mere s', () => {
  expect([0, 1, 2].map((count) => counted(count, 'set'))).toEqual(['0 sets', '1 set', '2 sets']);
  expect(counted(1, 'lift off a box', 'lifts off a box')).toBe('1 lift off a box');
  expect(counted(40, 'lift off a box', 'lifts off a box')).toBe('40 lifts off a box');
});
