import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { repCosts } from '../effort/repCost.ts';
import { ReadTable } from './readTable.ts';

const roots = Array.from({ length: 14 }, (_, j) => j / 10);
/** Reps that cost from a half to five per cent of strength each, anyhow by what there is to spare. */
const losses = fc.array(fc.double({ min: 0.005, max: 0.05, noNaN: true }), { minLength: 14, maxLength: 14 });
const bends = fc.double({ min: -0.6, max: 0.6, noNaN: true });

test('who begins a set with just what its reps need has nothing to spare at the last of them', () => {
  const any = Float64Array.from(roots, () => 1);
  fc.assert(
    fc.property(losses, bends, fc.integer({ min: 1, max: 30 }), (lossLn, bend, reps) => {
      const table = new ReadTable(any, Float64Array.from(lossLn), repCosts(bend), any, any);
      expect(Math.abs(table.surplusAtRep(table.neededFor(reps), reps))).toBeLessThan(1e-9);
    }),
  );
});
