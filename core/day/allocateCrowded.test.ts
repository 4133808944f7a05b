import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AllocationInput } from './Allocation.ts';
import { allocate } from './allocate.ts';
import { costByRules, crowded, leastByTrying, rankingOf } from './tests/allocationByRules.ts';

describe('allocate, where racks want the same pairs', () => {
  it('finds the best of three racks that all want the same three pairs', () => {
    fc.assert(
      fc.property(crowded(3, 4), (input) => {
        const { total, proof } = allocate(input);
        expect(total).toBeCloseTo(leastByTrying(input), 6);
        expect(proof.status).toBe('optimal');
      }),
      { numRuns: 100 },
    );
  });

  it('never loses to an allocation drawn by chance, nor claims a bound above one, however early time is up', () => {
    fc.assert(
      fc.property(
        crowded(5, 9),
        fc.constantFrom(0, 1, 5, 20, Number.POSITIVE_INFINITY),
        fc.nat(1e6),
        (input, questions, seed) => {
          let left = questions;
          const { total, proof } = allocate({ ...input, outOfTime: () => left-- <= 0 });
          const chance = lcg(seed);
          let least = Number.POSITIVE_INFINITY;
          for (let trial = 0; trial < 300; trial++) least = Math.min(least, costByChance(input, chance));
          expect(proof.bound).toBeLessThanOrEqual(least + 1e-9);
          // Cut short, what is found hangs at once but need not be good.
          if (questions === Number.POSITIVE_INFINITY) expect(total).toBeLessThanOrEqual(least + 1e-9);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('costs the same whatever the pairs are called, in whatever order racks list them', () => {
    fc.assert(
      fc.property(crowded(3, 4), (input) => {
        const last = input.racks[0]!.hookups.length - 1;
        const turned = {
          ...input,
          racks: input.racks.map((gear) => ({
            ...gear,
            hookups: gear.hookups.toReversed().map((one) => ({ ...one, pairId: `other ${one.pairId}` })),
          })),
          lifters: input.lifters.map(({ ranking, ...lifter }) => ({
            ...lifter,
            ranking: {
              ...ranking,
              sets: ranking.sets.map(({ hookups, chainPairs }) => ({
                hookups: hookups.map((index) => last - index).toReversed(),
                chainPairs,
              })),
            },
          })),
        };
        expect(allocate(turned).total).toBeCloseTo(allocate(input).total, 6);
      }),
      { numRuns: 100 },
    );
  });

  it('costs no more with a second stock, and with a stock for each rack what each rack costs alone', () => {
    fc.assert(
      fc.property(crowded(3, 4), (input) => {
        const own = {
          ...input,
          racks: input.racks.map((gear, rack) => ({
            ...gear,
            hookups: gear.hookups.map((one) => ({ ...one, pairId: `${one.pairId} of rack ${rack}` })),
          })),
        };
        const alone = input.racks.map((_, rack) => {
          const lifters = input.lifters.filter((lifter) => lifter.rack === rack);
          return lifters.length === 0 ? 0 : allocate({ ...input, lifters }).total;
        });
        const apart = allocate(own).total;
        expect(apart).toBeLessThanOrEqual(allocate(input).total + 1e-9);
        expect(apart).toBeCloseTo(
          alone.reduce((sum, total) => sum + total, 0),
          6,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('claims no more than holds for the sets that were left out of a large stock', () => {
    fc.assert(
      fc.property(crowded(3, 4), fc.integer({ min: 1, max: 6 }), (input, listed) => {
        const some = {
          ...input,
          lifters: input.lifters.map(({ ranking, ...lifter }) => {
            const misfits = ranking.sets.map((_, index) => ranking.scoreOf(index).misfit);
            const rest = misfits.slice(listed);
            return {
              ...lifter,
              ranking: {
                ...rankingOf(ranking.sets.slice(0, listed), misfits.slice(0, listed)),
                lowerBoundOf: (index: number) => misfits[index]!,
                leftOut: { count: rest.length, from: Math.min(...rest) },
              },
            };
          }),
        };
        const { total, proof } = allocate(some);
        const least = leastByTrying(input);
        expect(proof.bound).toBeLessThanOrEqual(least + 1e-9);
        expect(total).toBeGreaterThanOrEqual(least - 1e-9);
        expect(proof.setsLeftOut).toBe(input.lifters.length * (8 - listed));
        expect(proof.status === 'optimal').toBe(proof.gap <= 0.0005);
      }),
      { numRuns: 100 },
    );
  });
});

/** Each pair is given to a rack by chance; there every lifter takes one of the sets that can then hang. */
function costByChance(input: AllocationInput, chance: () => number): number {
  const rackOf = input.racks[0]!.hookups.map(() => Math.floor(chance() * input.racks.length));
  const one = Math.floor(chance() * 1000);
  const choice = input.lifters.map(({ rack, ranking }) => {
    const fit = [...ranking.sets.keys()].filter((index) =>
      ranking.sets[index]!.hookups.every((hookup) => rackOf[hookup] === rack),
    );
    const isShared = input.oneSetPull === 1;
    return fit[isShared ? one % fit.length : Math.floor(chance() * fit.length)]!;
  });
  return costByRules(input, choice);
}

/** Numbers from 0 to 1 that look like chance, from a seed. */
function lcg(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
