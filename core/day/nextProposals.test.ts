import { expect, it } from 'vitest';
import type { GearSet } from './Gear.ts';
import { nextProposals } from './nextProposals.ts';
import type { PrescribedSetup } from './PrescribedSetup.ts';

const set = (hookups: number[], ...chainPairs: number[]): GearSet => ({ hookups, chainPairs });
/** The places of the sets that are proposed, of a ranking with these misfits, best first. */
function proposed(
  sets: readonly GearSet[],
  misfits: readonly number[],
  {
    most = 9,
    before,
    isAnother = () => true,
  }: {
    most?: number;
    before?: GearSet;
    isAnother?: (one: PrescribedSetup, known: PrescribedSetup) => boolean;
  } = {},
): number[] {
  let given = 0;
  const next = () => (given < sets.length ? { index: given, barKg: 100, misfit: misfits[given++]! } : null);
  return nextProposals(next, sets, isAnother, [], most, before).map((one) => sets.indexOf(one.set));
}
const bands = (...pairs: number[]) => pairs.map((pair) => set([pair], 0));

it('gives of those that tie the one with fewer bands, then fewer chains, then fewer changes from what hangs there', () => {
  const tied = [set([0, 1], 0), set([2], 2), set([2], 1), set([3], 1)];
  const misfits = [0.01, 0.0101, 0.0102, 0.0103];
  expect(proposed(tied, misfits, { before: set([3], 0) })).toEqual([3, 2, 1, 0]);
  expect(proposed(tied, misfits)).toEqual([2, 3, 1, 0]);
  expect(proposed(tied.toReversed(), misfits, { before: set([2], 2) })).toEqual([1, 0, 2, 3]);
});

it('counts those as tied that lie within half a tenth of a point of the best of them', () => {
  // The third ties with the second, but not with the first.
  const three = [set([0, 1], 0), set([0, 2], 0), set([3], 0)];
  expect(proposed(three, [0.01, 0.0104, 0.0107])).toEqual([0, 1, 2]);
  expect(proposed(three, [0.01, 0.0102, 0.0104])).toEqual([2, 0, 1]);
});

const isFarther = (one: PrescribedSetup, known: PrescribedSetup) => one.misfit - known.misfit > 0.015;

it('ends with as many as are wanted, or with the last of them, and passes over what is no other proposal', () => {
  const four = bands(0, 1, 2, 3);
  const misfits = [0.01, 0.02, 0.03, 0.04];
  expect(proposed(four, misfits, { most: 2 })).toEqual([0, 1]);
  expect(proposed(four, misfits)).toEqual([0, 1, 2, 3]);
  expect(proposed([], [])).toEqual([]);
  expect(proposed(four, misfits, { isAnother: isFarther })).toEqual([0, 2]);
  // Of those that tie no more are given than are wanted either.
  expect(proposed(four, [0.01, 0.01, 0.01, 0.01], { most: 1 })).toEqual([0]);
});
