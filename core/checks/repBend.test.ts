import { expect, it } from 'vitest';
import { bareLoad } from '#core/load/bareLoad.ts';
import { liftModelOf } from '#core/strength/estimateStrength.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { readerOf } from '#core/strength/readGroup.ts';
import data from './reps.json' with { type: 'json' };

// Seven published formulas for the repetition maximum (reps.json) stand for how people differ. Mayhew's gives nine in a hundred more than
// what is lifted once, so that no lifter follows it; Epley's three.
const { willardson2005: _, speedDoubles: __, mayhew: ___, ...formulas } = data;

const range = { fromM: 0.65, toM: 1.02 };
const lift = liftModelOf('bench', { load: bareLoad(range.fromM, range.toM), start: 'free', range });
const { mean, sd } = populationPrior('bench');
const steps = (count: number, widest: number) =>
  Array.from({ length: 2 * count + 1 }, (_, i) => (widest * (i - count)) / count);

/** The greatest miss of a formula, in ln of the maximum, by the lifter of those who comes nearest to it. */
function nearest(values: number[][], tirings: number[], bends: number[]): number {
  const misses = tirings.flatMap((tiring) =>
    bends.map((bend) => {
      const parameters = { ...mean, lnTiring: tiring, tiringBend: bend };
      const { table } = readerOf(parameters, lift)(lift.reference);
      return Math.max(
        ...values.map(([reps, maximumKg]) => Math.abs(table.neededFor(reps!) - Math.log(maximumKg! / 100))),
      );
    }),
  );
  return Math.min(...misses);
}

it.each(Object.entries(formulas))(
  'a bencher within two and a half standard deviations of tiring and of its bend makes reps by %s to a hundredth of the maximum',
  (_name, { values }) => {
    const several = values.filter(([reps]) => reps! > 1);
    const miss = nearest(several, steps(20, 2.5 * sd.lnTiring), steps(20, 2.5 * sd.tiringBend));
    expect(miss).toBeLessThan(0.0125);
  },
);

it.each(['brzycki', 'lombardi'] as const)('without a bend nobody makes reps by %s', (name) => {
  const several = formulas[name].values.filter(([reps]) => reps! > 1);
  expect(nearest(several, steps(40, 3 * sd.lnTiring), [0])).toBeGreaterThan(0.018);
});
