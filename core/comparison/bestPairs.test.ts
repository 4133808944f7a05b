import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestPairs, type Pair, sumOf } from './bestPairs.ts';

/** Every way of pairing, one after the other: the first with each of the others, and all ways of what is left. */
function everyPairing(members: readonly number[]): Pair[][] {
  const [first, ...rest] = members;
  if (first === undefined) return [[]];
  return rest.flatMap((other) =>
    everyPairing(rest.filter((one) => one !== other)).map((pairs) => [[first, other] as const, ...pairs]),
  );
}

const numbered = (count: number) => Array.from({ length: count }, (_, i) => i);
const table = (count: number) =>
  fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: count ** 2, maxLength: count ** 2 });

describe('pairs with the least sum of distances', () => {
  it('are those found by trying every pairing', () => {
    const drawn = fc.constantFrom(2, 4, 6, 8).chain((count) => fc.tuple(fc.constant(count), table(count)));
    fc.assert(
      fc.property(drawn, ([count, lengths]) => {
        const distance = (a: number, b: number) => lengths[a * count + b]!;
        const best = Math.min(...everyPairing(numbered(count)).map((pairs) => sumOf(pairs, distance)));
        const pairs = bestPairs(count, distance);
        expect(pairs.flat().toSorted((a, b) => a - b)).toEqual(numbered(count));
        expect(sumOf(pairs, distance)).toBeCloseTo(best, 6);
      }),
      { numRuns: 60 },
    );
  });

  it('of a crew too large to try all, leave no two pairs that would be nearer with partners exchanged, and find twins', () => {
    const places = fc.array(
      fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
      {
        minLength: 10,
        maxLength: 20,
      },
    );
    fc.assert(
      fc.property(places, (singles) => {
        const all = [...singles, ...singles.map(([x, y]) => [x + 1e-4, y] as const)];
        const distance = (a: number, b: number) =>
          Math.hypot(all[a]![0] - all[b]![0], all[a]![1] - all[b]![1]);
        const pairs = bestPairs(all.length, distance);
        // On a line of twins each is paired with the own one at most: the sum of that pairing is known.
        expect(sumOf(pairs, distance)).toBeLessThanOrEqual(singles.length * 1e-4 + 1e-6);
        for (const [i, [a, b]] of pairs.entries())
          for (const [c, d] of pairs.slice(i + 1)) {
            const now = distance(a, b) + distance(c, d) - 1e-6;
            expect(distance(a, c) + distance(b, d)).toBeGreaterThan(now);
            expect(distance(a, d) + distance(b, c)).toBeGreaterThan(now);
          }
      }),
      { numRuns: 12 },
    );
  });
});
