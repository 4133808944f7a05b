import { expect, it } from 'vitest';
import type { AllocationLifter } from './Allocation.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { sharedStock } from './sharedStock.ts';
import { anyPair } from './tests/manyPieces.ts';

const chain = { massPerMetreKg: 8, lengthM: 1, attachBelowBarM: 0, count: 2 };
const rack = (pairIds: readonly string[], pairs: number): RackGear => ({
  barKg: 20,
  collarsKg: 0,
  discs: [],
  hookups: pairIds.map((pairId, i) => anyPair(pairId, `h${i}`)),
  chains: [{ chainPairId: 'c', chain, pairs }],
});
/** Pair `p` hangs in two ways at the first rack and in one at the second; two pairs of chains are listed here, three there. */
const racks = [rack(['p', 'q', 'p'], 2), rack(['p'], 3)];
const lifter = (at: number, set: GearSet, setFixed = true) =>
  ({ rack: at, ranking: { sets: [set] }, weight: 1, setFixed }) as unknown as AllocationLifter;
const stock = (...lifters: AllocationLifter[]) =>
  sharedStock({ racks, lifters }).map(({ id, capacity, clash }) => [id, capacity, clash]);
const hung = (hookups: number[], pairs = 0): GearSet => ({ hookups, chainPairs: [pairs] });
const free = [
  ['p', 1, false],
  ['q', 1, false],
  ['c', 3, false],
];

it('is each pair once and as many pairs of a chain as the rack that lists most, by who may hang them and how', () => {
  expect(stock()).toEqual(free);
  const [p, q, c] = sharedStock({ racks, lifters: [] });
  expect(p!.users).toEqual([
    { rack: 0, hookups: [0, 2], chain: null },
    { rack: 1, hookups: [0], chain: null },
  ]);
  expect(q!.users).toEqual([{ rack: 0, hookups: [1], chain: null }]);
  expect(c!.users.map((user) => [user.rack, user.chain])).toEqual([
    [0, 0],
    [1, 0],
  ]);
});

it('clashes where the coach hangs more at once than there is, and there alone', () => {
  const [here, there] = [lifter(0, hung([2], 2)), lifter(1, hung([0], 2))];
  expect(stock(here, there)).toEqual([
    ['p', 2, true],
    ['q', 1, false],
    ['c', 4, true],
  ]);
  // Lifters of one rack take turns with one pair and the same chains; what nobody fixed is not counted.
  expect(stock(here, lifter(0, hung([0], 1)))).toEqual(free);
  expect(stock(here, lifter(1, hung([0], 2), false))).toEqual(free);
  expect(stock(lifter(0, hung([], 1)), lifter(1, hung([], 2)))).toEqual(free);
});
