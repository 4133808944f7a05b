import { expect, test } from 'vitest';
import { findLimit } from './findLimit.ts';

const rootOfTwo = (x: number) => x * x < 2;
const search = { guess: 1, step: 0.1, tolerance: 1e-9, lowest: 0, highest: 100 };

test('the limit is enclosed to the tolerance, wherever the search begins', () => {
  for (const guess of [0, 1, 50, 1000]) {
    const { below, above } = findLimit(rootOfTwo, { ...search, guess })!;
    expect(below).toBeLessThan(Math.SQRT2);
    expect(above).toBeGreaterThanOrEqual(Math.SQRT2);
    expect(above - below).toBeLessThanOrEqual(1e-9);
  }
  expect(findLimit(rootOfTwo, { ...search, lowest: 2 })).toBeNull();
  expect(findLimit(rootOfTwo, { ...search, highest: 1.4 })).toBeNull();
});

test('a search without an end is refused', () => {
  for (const field of ['guess', 'step', 'tolerance'])
    expect(() => findLimit(rootOfTwo, { ...search, [field]: Number.NaN })).toThrow(RangeError);
});
