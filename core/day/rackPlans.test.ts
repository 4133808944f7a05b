import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { costOf, rackPlans } from './rackPlans.ts';
import { sharedStock } from './sharedStock.ts';
import { costByRules, crowded } from './tests/allocationByRules.ts';

/** Up to three lifters at one rack of three, whose three pairs the other racks list too; each pair may hang or not. */
const atOneRack = crowded(3, 3).map(({ lifters, ...input }) => ({
  ...input,
  lifters: lifters.map((lifter) => ({ ...lifter, rack: 0 })),
}));
const permits = fc.array(fc.integer({ min: 0, max: 1 }), { minLength: 3, maxLength: 3 });
type Input = typeof atOneRack extends fc.Arbitrary<infer Value> ? Value : never;

/** What every choice of sets within what is allowed costs, straight from the rules. */
function costsWithin(input: Input, allowed: readonly number[]): number[] {
  let choices: number[][] = [[]];
  for (const { ranking } of input.lifters) {
    const within = [...ranking.sets.keys()].filter((index) =>
      ranking.sets[index]!.hookups.every((hookup) => allowed[hookup] === 1),
    );
    choices = choices.flatMap((choice) => within.map((set) => [...choice, set]));
  }
  return choices.map((choice) => costByRules(input, choice));
}

it("finds a rack's cheapest rotation within whatever is allowed, asked again or for the first time, and however it is charged", () => {
  fc.assert(
    fc.property(
      atOneRack,
      fc.array(permits, { minLength: 1, maxLength: 6 }),
      fc.double({ min: 0, max: 0.3, noNaN: true }),
      (input, asked, charge) => {
        const items = sharedStock(input);
        const plans = rackPlans(input, 0, items);
        for (const allowed of [...asked, ...asked]) {
          const least = Math.min(...costsWithin(input, allowed));
          const plan = plans.own(allowed)!;
          expect(plan.cost).toBeCloseTo(least, 9);
          expect(costOf([plan, plan])).toBeCloseTo(2 * least, 9);
          expect(plan.most.every((count, item) => count <= allowed[item]!)).toBe(true);
          // A charge for every piece makes the cheapest dearer by no more than what it takes, and never cheaper.
          const charges = input.lifters.map(() => items.map(() => charge));
          const charged = plans.cheapest(allowed, charges)!;
          const taken = charged.takes.flat().reduce((sum, count) => sum + count, 0);
          expect(charged.charged).toBeCloseTo(charged.cost + charge * taken, 9);
          expect(charged.charged).toBeGreaterThanOrEqual(least - 1e-9);
          expect(charged.charged).toBeLessThanOrEqual(
            least + charge * plan.takes.flat().reduce((sum, count) => sum + count, 0) + 1e-9,
          );
        }
      },
    ),
    { numRuns: 60 },
  );
});

it('forgets sets for good where no rotation with them stays below a cost, and none of one that does', () => {
  fc.assert(
    fc.property(atOneRack, fc.double({ min: 0.2, max: 3, noNaN: true }), (input, factor) => {
      const items = sharedStock(input);
      const plans = rackPlans(input, 0, items);
      const allowed = items.map(() => 1);
      const free = input.lifters.map(() => items.map(() => 0));
      const least = Math.min(...costsWithin(input, allowed));
      plans.forget(allowed, free, factor * least);
      const found = plans.cheapest(allowed, free);
      if (factor > 1.001) expect(found!.cost).toBeCloseTo(least, 9);
      // Bounds of the tests' rankings are half of the misfit: of less than that nothing is left.
      if (factor < 0.499 && input.oneSetPull < 1) expect(found).toBeNull();
    }),
    { numRuns: 100 },
  );
});
