import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { evenParts } from './evenParts.ts';

test('fourteen on two pages are seven and seven, on three five, five and four', () => {
  const fourteen = Array.from({ length: 14 }, (_, i) => i);
  const lengths = (parts: number) => evenParts(fourteen, parts).map((part) => part.length);
  expect(lengths(2)).toEqual([7, 7]);
  expect(lengths(3)).toEqual([5, 5, 4]);
});

test('nobody is lost or moved, no part is empty, and none is longer than another by two', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(), { minLength: 1 }), fc.integer({ min: 1, max: 50 }), (all, parts) => {
      const split = evenParts(all, parts);
      const lengths = split.map((part) => part.length);
      expect(split.flat()).toEqual(all);
      expect(split).toHaveLength(Math.min(parts, all.length));
      expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(1);
    }),
  );
});
