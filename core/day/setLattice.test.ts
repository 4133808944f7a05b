import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { enumerateSetups } from './enumerateSetups.ts';
import type { GearSet } from './Gear.ts';
import { type SetLattice, setLattice, subLattice } from './setLattice.ts';
import { anyPair } from './tests/manyPieces.ts';

const chain = { massPerMetreKg: 8, lengthM: 1, attachBelowBarM: 0, count: 2 };
const all = enumerateSetups({
  hookups: ['p0', 'p1', 'p2'].map((pairId) => anyPair(pairId)),
  chains: [{ chainPairId: 'c', chain, pairs: 2 }],
});
const named = ({ hookups, chainPairs }: GearSet) => `${hookups.join()}/${chainPairs.join()}`;
const piecesOf = ({ hookups, chainPairs }: GearSet) => hookups.length + chainPairs[0]!;
const isPartOf = (less: GearSet, set: GearSet) =>
  less.hookups.every((one) => set.hookups.includes(one)) && less.chainPairs[0]! <= set.chainPairs[0]!;

/** Holds all that is part of one of these, smaller ones first, and leads from each to just those with one thing less. */
function expectLattice({ sets, edges, edgesOf }: SetLattice, wanted: readonly GearSet[]) {
  const held = all.filter((set) => wanted.some((one) => isPartOf(set, one)));
  expect(sets.map(named).toSorted()).toEqual(held.map(named).toSorted());
  expect(sets.map(piecesOf)).toEqual(sets.map(piecesOf).toSorted((a, b) => a - b));
  sets.forEach((set, i) => {
    const below = Array.from(edges.slice(edgesOf[i], edgesOf[i + 1]), (at) => named(sets[at]!));
    const oneLess = held.filter((one) => isPartOf(one, set) && piecesOf(one) === piecesOf(set) - 1);
    expect(below.toSorted()).toEqual(oneLess.map(named).toSorted());
  });
}

it('leads from every set to those with one thing less, in the whole and in a part', () => {
  fc.assert(
    fc.property(fc.subarray(all, { minLength: 1 }), fc.infiniteStream(fc.boolean()), (wanted, marks) => {
      const whole = setLattice(wanted);
      expectLattice(whole, wanted);
      wanted.forEach((set) => expect(named(whole.sets[whole.indexOf(set)]!)).toBe(named(set)));
      const marked = Uint8Array.from(whole.sets, () => (marks.next().value ? 1 : 0));
      const part = subLattice(whole, marked);
      expectLattice(
        part,
        whole.sets.filter((_, set) => marked[set] === 1),
      );
      expect([...part.from].map((set) => whole.sets[set])).toEqual(part.sets);
    }),
    { numRuns: 60 },
  );
});
