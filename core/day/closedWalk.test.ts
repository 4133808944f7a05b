import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { closedWalk, throughBounds, walkMemory } from './closedWalk.ts';
import { enumerateSetups } from './enumerateSetups.ts';
import { rotationChanges } from './handling.ts';
import { setLattice } from './setLattice.ts';
import { anyPair } from './tests/manyPieces.ts';

const hookups = ['p0', 'p0', 'p1'].map((pairId, i) => anyPair(pairId, `h${i}`));
const chain = { massPerMetreKg: 8, lengthM: 1, attachBelowBarM: 0, count: 2 };
const sets = enumerateSetups({ hookups, chains: [{ chainPairId: 'c', chain, pairs: 1 }] });
const lattice = setLattice(sets);
const cost = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000) },
    { weight: 1, arbitrary: fc.constant(Number.POSITIVE_INFINITY) },
  ),
  {
    minLength: lattice.sets.length,
    maxLength: lattice.sets.length,
  },
);

it('finds as cheap a rotation as trying every choice of sets, and a bound to it when time is up', () => {
  fc.assert(
    fc.property(
      fc.array(cost, { minLength: 1, maxLength: 3 }),
      fc.constantFrom(0, 0.01, 0.1, 0.5),
      (costs, changeCost) => {
        let least = Number.POSITIVE_INFINITY;
        let choices: number[][] = [[]];
        for (const _ of costs)
          choices = choices.flatMap((choice) => lattice.sets.map((_set, i) => [...choice, i]));
        const price = (choice: readonly number[]) =>
          choice.reduce((sum, set, turn) => sum + costs[turn]![set]!, 0) +
          changeCost * rotationChanges(choice.map((set) => lattice.sets[set]!));
        for (const choice of choices) least = Math.min(least, price(choice));
        const walk = closedWalk(
          lattice,
          costs.map((values) => Float64Array.from(values)),
          changeCost,
          () => false,
          walkMemory(3, 1, lattice.sets.length, 3),
        );
        expect(walk?.cost ?? Number.POSITIVE_INFINITY).toBeCloseTo(least, 9);
        if (walk !== null) expect(price(walk.sets)).toBeCloseTo(walk.cost, 9);
        const hurried = closedWalk(
          lattice,
          costs.map((values) => Float64Array.from(values)),
          changeCost,
          () => true,
          walkMemory(3, 1, lattice.sets.length, 3),
        );
        expect(hurried?.cost ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(least + 1e-9);
        if (hurried !== null) expect(price(hurried.sets)).toBeGreaterThanOrEqual(least - 1e-9);
      },
    ),
    { numRuns: 60 },
  );
});

it('bounds every rotation through a set from below, and meets the cheapest where changes cost nothing', () => {
  fc.assert(
    fc.property(
      fc.array(cost, { minLength: 2, maxLength: 3 }),
      fc.constantFrom(0, 0.1),
      (costs, changeCost) => {
        const rows = costs.map((values) => Float64Array.from(values));
        const memory = walkMemory(3, 1, lattice.sets.length, 3);
        const bounds = throughBounds(lattice, rows, changeCost, memory);
        let choices: number[][] = [[]];
        for (const _ of costs)
          choices = choices.flatMap((choice) => lattice.sets.map((_set, i) => [...choice, i]));
        const cheapest = costs.map((values) => values.map(() => Number.POSITIVE_INFINITY));
        for (const choice of choices) {
          const price =
            choice.reduce((sum, set, turn) => sum + costs[turn]![set]!, 0) +
            changeCost * rotationChanges(choice.map((set) => lattice.sets[set]!));
          choice.forEach((set, turn) => {
            cheapest[turn]![set] = Math.min(cheapest[turn]![set]!, price);
          });
        }
        cheapest.forEach((prices, turn) => {
          prices.forEach((price, set) => {
            if (changeCost === 0) expect(bounds[turn]![set]).toBeCloseTo(price, 9);
            else expect(bounds[turn]![set]).toBeLessThanOrEqual(price + 1e-9);
          });
        });
      },
    ),
    { numRuns: 40 },
  );
});
