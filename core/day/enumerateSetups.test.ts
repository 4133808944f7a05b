import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { enumerateSetups } from './enumerateSetups.ts';
import { anyPair } from './tests/manyPieces.ts';

const hookupsOf = (waysOfPair: readonly number[]) =>
  waysOfPair.flatMap((ways, pair) =>
    Array.from({ length: ways }, (_, way) => anyPair(`p${pair}`, `h${way}`)),
  );
const chain = { massPerMetreKg: 10, lengthM: 1, attachBelowBarM: 0, count: 2 };

describe('enumerateSetups', () => {
  it('counts as the elementary symmetric sums of the ways of each pair, times the chain choices', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 3 }), { maxLength: 6 }),
        fc.array(fc.integer({ min: 0, max: 3 }), { maxLength: 2 }),
        (ways, chainPairs) => {
          // (1 + w1 x)(1 + w2 x)...: the coefficient of x^k counts the sets of k pairs.
          const coefficients = [1, 0, 0, 0];
          for (const w of ways) for (let k = 3; k > 0; k--) coefficients[k]! += coefficients[k - 1]! * w;
          const chains = chainPairs.map((pairs, i) => ({ chainPairId: `c${i}`, chain, pairs }));
          const sets = enumerateSetups({ hookups: hookupsOf(ways), chains });
          const bandSets = coefficients.reduce((a, b) => a + b, 0);
          expect(sets).toHaveLength(chainPairs.reduce((product, pairs) => product * (pairs + 1), bandSets));
        },
      ),
    );
  });

  it('never hangs a pair twice, nor more than three loops a side, nor a set twice', () => {
    const hookups = hookupsOf([2, 1, 2, 3]);
    const sets = enumerateSetups({ hookups, chains: [] });
    for (const set of sets) {
      const pairs = set.hookups.map((index) => hookups[index]!.pairId);
      expect(new Set(pairs).size).toBe(pairs.length);
      expect(pairs.length).toBeLessThanOrEqual(3);
    }
    expect(new Set(sets.map((set) => set.hookups.join())).size).toBe(sets.length);
  });
});
