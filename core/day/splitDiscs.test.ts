import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { splitDiscs } from './splitDiscs.ts';

it('gives out every pair once, and no rack more than one pair of a kind beyond another', () => {
  const stock = fc.array(fc.record({ massKg: fc.constantFrom(25, 20, 10), pairs: fc.nat(9) }));
  fc.assert(
    fc.property(stock, fc.integer({ min: 1, max: 5 }), (discs, racks) => {
      const shares = splitDiscs(discs, racks);
      discs.forEach(({ pairs }, kind) => {
        const counts = shares.map((share) => share[kind]!.pairs);
        expect(counts.reduce((sum, count) => sum + count, 0)).toBe(pairs);
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
      });
    }),
  );
});
