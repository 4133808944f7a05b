import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LinearProgram, solveInteger, solveRelaxed } from './integerProgram.ts';

/** A knapsack: values as negative costs, one weight row. Small enough to try every choice. */
const knapsacks = fc.record({
  items: fc.array(
    fc.record({ value: fc.integer({ min: 1, max: 30 }), weight: fc.integer({ min: 1, max: 15 }) }),
    {
      minLength: 1,
      maxLength: 9,
    },
  ),
  room: fc.integer({ min: 0, max: 50 }),
});

function program({
  items,
  room,
}: {
  items: { value: number; weight: number }[];
  room: number;
}): LinearProgram {
  return {
    columns: items.map(({ value }) => ({ cost: -value, upper: 1, integer: true })),
    rows: [
      {
        lower: Number.NEGATIVE_INFINITY,
        upper: room,
        terms: items.map(({ weight }, column) => ({ column, factor: weight })),
      },
    ],
  };
}

describe('integerProgram', () => {
  it('packs a knapsack as well as trying every choice does, and the relaxation is no worse', async () => {
    await fc.assert(
      fc.asyncProperty(knapsacks, async (knapsack) => {
        let best = 0;
        for (let choice = 0; choice < 2 ** knapsack.items.length; choice++) {
          const taken = knapsack.items.filter((_, i) => (choice >> i) & 1);
          const weight = taken.reduce((sum, item) => sum + item.weight, 0);
          if (weight <= knapsack.room)
            best = Math.max(
              best,
              taken.reduce((sum, item) => sum + item.value, 0),
            );
        }
        const solution = (await solveInteger(program(knapsack), 10))!;
        expect(solution.status).toBe('optimal');
        expect(solution.objective).toBeCloseTo(-best, 6);
        expect((await solveRelaxed(program(knapsack)))!.objective).toBeLessThanOrEqual(-best + 1e-6);
      }),
      { numRuns: 40 },
    );
  });

  it('prices a row by what one more unit of it would save', async () => {
    // Fractional knapsack in closed form: the item that is cut has 6 of value per 3 of weight.
    const cut = program({
      items: [
        { value: 10, weight: 2 },
        { value: 6, weight: 3 },
      ],
      room: 4,
    });
    const solution = (await solveRelaxed(cut))!;
    expect(solution.objective).toBeCloseTo(-14, 9);
    expect(solution.rowPrices[0]).toBeCloseTo(-2, 9);
  });

  it('says so when nothing is feasible', async () => {
    const impossible: LinearProgram = {
      columns: [{ cost: 1, upper: 1, integer: true }],
      rows: [{ lower: 2, upper: 2, terms: [{ column: 0, factor: 1 }] }],
    };
    expect(await solveInteger(impossible, 10)).toBeNull();
    expect(await solveRelaxed(impossible)).toBeNull();
  });
});
