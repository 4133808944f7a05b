import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import type { AllocationInput } from './Allocation.ts';
import { boundBranch } from './boundBranch.ts';
import { wholeBranch } from './branch.ts';
import { enumerateSetups } from './enumerateSetups.ts';
import type { RackGear } from './Gear.ts';
import { rackPlans } from './rackPlans.ts';
import { sharedStock } from './sharedStock.ts';
import { leastByTrying, misfit, pairs, rankingOf } from './tests/allocationByRules.ts';

/** A lifter at each rack, who hangs one pair of all or none. */
const fought = fc
  .record({
    pairCount: fc.integer({ min: 1, max: 3 }),
    misfits: fc.array(fc.array(misfit, { minLength: 4, maxLength: 4 }), { minLength: 2, maxLength: 4 }),
  })
  .map(({ pairCount, misfits }): AllocationInput => {
    const gear: RackGear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: pairs(pairCount) };
    const sets = enumerateSetups(gear, [...gear.hookups.keys()], 1);
    return {
      racks: misfits.map(() => gear),
      lifters: misfits.map((own, rack) => ({
        rack,
        weight: 1,
        setFixed: false,
        ranking: rankingOf(sets, own),
      })),
      oneSetPull: 0,
      bandChangeMinutes: 1,
      outOfTime: () => false,
    };
  });

it('proves by prices alone who shall have the one pair that all want, and mostly so where there are three, in few rounds', () => {
  const tried = fc.sample(fought, 150).map((input) => {
    const least = leastByTrying(input);
    const items = sharedStock(input);
    const racks = input.racks.map((_, rack) => rackPlans(input, rack, items));
    let rounds = 0;
    const outOfTime = () => {
      rounds++;
      return false;
    };
    const search = { least: () => least, offer: () => {}, outOfTime };
    const bounded = boundBranch(wholeBranch(racks, items), racks, items, search);
    // Nothing is left of all allocations where none can be better than the best.
    const isProven = bounded === null || bounded.bound > least - 1e-9;
    return { isProven, rounds, pairCount: items.length };
  });
  expect(tried.filter(({ isProven, pairCount }) => !isProven && pairCount === 1)).toEqual([]);
  // The prices of an assignment prove it where they are exact (Koopmans and Beckmann 1957); steps towards them come near.
  expect(tried.filter(({ isProven }) => isProven).length).toBeGreaterThan(0.9 * tried.length);
  expect(tried.reduce((sum, { rounds }) => sum + rounds, 0)).toBeLessThan(20 * tried.length);
});

it('looks at each rack once where time is up at once', () => {
  const [input] = fc.sample(fought, { numRuns: 1, seed: 3 });
  const items = sharedStock(input!);
  let looks = 0;
  const racks = input!.racks.map((_, rack) => {
    const plans = rackPlans(input!, rack, items);
    const promising: typeof plans.promising = (...asked) => {
      looks++;
      return plans.promising(...asked);
    };
    return { ...plans, promising };
  });
  const search = { least: () => Number.POSITIVE_INFINITY, offer: () => {}, outOfTime: () => true };
  boundBranch(wholeBranch(racks, items), racks, items, search);
  expect(looks).toBe(racks.length);
});
