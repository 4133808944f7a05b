import { expect, test } from 'vitest';
import { shuffledShares } from './shuffledShares.ts';

test('each step is filled evenly, the same way every time', () => {
  const steps = shuffledShares(50, 4);
  const even = Array.from({ length: 50 }, (_, i) => (i + 0.5) / 50);
  for (const shares of steps) expect([...shares].toSorted((a, b) => a - b)).toEqual(even);
  expect(shuffledShares(50, 4)).toEqual(steps);
});

test('no step tells of another, be it the next or one far on', () => {
  const count = 2000;
  const steps = shuffledShares(count, 12);
  for (const [i, a] of steps.entries())
    for (const b of steps.slice(i + 1)) {
      const shared = a.reduce((sum, share, k) => sum + (share - 0.5) * (b[k]! - 0.5), 0) / count;
      // Of independent draws it scatters by 1 / sqrt(count), 0.022; 66 pairs stay within four of these.
      expect(Math.abs(12 * shared)).toBeLessThan(4 / Math.sqrt(count));
    }
});
