import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { repCosts } from '../effort/repCost.ts';
import { ReadTable } from './readTable.ts';
import { FARTHEST_SURPLUS, STOP_ROOTS } from './response.ts';

const roots = Array.from({ length: 14 }, (_, j) => j / 10);
/** Reps that cost from a half to ten per cent of strength each, anyhow by what there is to spare. */
const losses = fc.array(fc.double({ min: 0.005, max: 0.1, noNaN: true }), { minLength: 14, maxLength: 14 });
const bends = fc.double({ min: -0.6, max: 0.6, noNaN: true });

test('who begins a set with just what its reps need has nothing to spare at the last of them, and counts as good for so many halfway to one more', () => {
  const any = Float64Array.from(roots, () => 1);
  fc.assert(
    fc.property(losses, bends, fc.integer({ min: 1, max: 60 }), (lossLn, bend, reps) => {
      const table = new ReadTable(any, Float64Array.from(lossLn), repCosts(bend), any, any);
      const [needed, forOneMore] = [reps, reps + 1].map((count) => table.neededFor(count));
      expect(Math.abs(table.surplusAtRep(needed!, reps))).toBeLessThan(1e-9);
      const halfway = (needed! + forOneMore!) / 2;
      expect(table.neededFor(reps + 0.5)).toBeCloseTo(halfway, 12);
      // No more than forty are counted.
      if (needed! < FARTHEST_SURPLUS && reps < 40) expect(table.repsPossible(halfway)).toBeCloseTo(reps, 9);
    }),
  );
});

/** What is spare of 0.4 squared at each rep, where a rep costs 0.02. */
const spare = (rep: number) => 0.16 - 0.02 * (rep - 1);

test('reps that cost alike leave so much less each, and speeds that rise with the root follow it', () => {
  // 0.02 of ln strength a rep, 0.3 m/s and the root of what is spare; peaks half as fast again.
  const table = new ReadTable(
    Float64Array.from(roots, (root) => 0.3 + root),
    Float64Array.from(roots, () => 0.02),
    repCosts(0),
    Float64Array.from(STOP_ROOTS, (root) => 1 - root),
    Float64Array.from(roots, () => 1.5),
  );
  const speed = (rep: number) => 0.3 + Math.sqrt(spare(rep));
  expect(table.surplusAtRep(0.16, 5)).toBeCloseTo(spare(5), 12);
  // The fifth place is that of a surplus of 0.4 squared.
  expect([table.lastMps(5)[0], table.lastMps(5)[4]]).toEqual([0.3, expect.closeTo(speed(5), 12)]);
  expect(table.meanMps(0.16, 3)).toBeCloseTo((speed(1) + speed(2) + speed(3)) / 3, 12);
  expect(table.lossOfSet(0.16, 3)).toBeCloseTo(0.06, 12);
  expect(table.peakMps()[4]).toBeCloseTo(1.5 * 0.7, 12);
  // What comes after rep n is 0.02 n; a set begun in the middle between two rungs is good for n.
  expect([...table.repsAlong(0.01, 0.02, new Float64Array(5))].map((reps) => reps.toFixed(9))).toEqual(
    [1, 2, 3, 4, 5].map((reps) => reps.toFixed(9)),
  );
  // Nobody is counted for more than forty.
  expect(table.repsPossible(39 * 0.02)).toBeCloseTo(39.5, 9);
  expect(table.repsPossible(60 * 0.02)).toBe(40);
  // Straight between the roots of what was lacking, constant outside.
  expect([0, 0.05, 0.11, 0.35, 0.65, 0.9].map((root) => table.stopAt(root).toFixed(9))).toEqual(
    [0.95, 0.95, 0.89, 0.65, 0.35, 0.35].map((place) => place.toFixed(9)),
  );
});
