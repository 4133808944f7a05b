import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSets } from './leastSets.ts';

const sets = fc.array(fc.bigInt({ min: 0n, max: 63n }), { maxLength: 12 });

describe('the least sets of pairs', () => {
  it('do for the same stocks as all of them, and none of them holds another', () => {
    fc.assert(
      fc.property(sets, fc.bigInt({ min: 0n, max: 63n }), (all, stock) => {
        const least = leastSets(all);
        const isDoneBy = (some: bigint[]) => some.some((set) => (set & ~stock) === 0n);
        expect(isDoneBy(least)).toBe(isDoneBy(all));
        for (const [at, set] of least.entries())
          for (const other of least.toSpliced(at, 1)) expect(other & set).not.toBe(other);
      }),
    );
  });
});
