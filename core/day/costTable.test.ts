import { expect, it } from 'vitest';
import type { AllocationLifter } from './Allocation.ts';
import { costTable } from './costTable.ts';
import type { GearSet } from './Gear.ts';
import type { SharedItem } from './sharedStock.ts';
import { rankingOf } from './tests/allocationByRules.ts';

const set = (hookups: number[], pairs = 0): GearSet => ({ hookups, chainPairs: [pairs] });
const bare = set([]);
const pair = set([0]);
const both = set([0, 1]);
const chained = set([0], 2);
const lifter = (sets: GearSet[], misfits: number[], weight = 1): AllocationLifter => ({
  rack: 0,
  ranking: rankingOf(sets, misfits),
  weight,
  setFixed: false,
});
/** A pair that hangs in hookups 0 and 1, and a kind of chain; another rack alone wants the third. */
const items: SharedItem[] = [
  {
    id: 'p',
    sort: 'bandPair',
    capacity: 1,
    clash: false,
    users: [{ rack: 0, hookups: [0, 1], chain: null }],
  },
  { id: 'c', sort: 'chainPair', capacity: 2, clash: false, users: [{ rack: 0, hookups: [], chain: 0 }] },
  { id: 'q', sort: 'bandPair', capacity: 1, clash: false, users: [{ rack: 1, hookups: [0], chain: null }] },
];
const tableOf = () =>
  costTable([lifter([bare, pair, both], [0.4, 0.2, 0.6]), lifter([chained, bare], [0.1, 0.8], 2)], 0, items);
const named = ({ hookups, chainPairs }: GearSet) => `${hookups.join('')}|${chainPairs.join('')}`;
type Table = ReturnType<typeof tableOf>;
const indexOf = (table: Table, wanted: GearSet) =>
  Array.from({ length: table.size }, (_, at) => at).find((at) => named(table.setAt(at)) === named(wanted))!;
const namesIn = (table: Table, allowed: number[]) =>
  [...table.part(allowed).from].map((at) => named(table.setAt(at))).toSorted();

it('knows what each set takes of what racks share, and what it costs whom: misfit by weight, and a ten-thousandth for a pair', () => {
  const table = tableOf();
  const takes = [bare, pair, both, chained].map((one) => table.takes(indexOf(table, one)));
  expect(takes).toEqual([
    [],
    [{ item: 0, count: 1 }],
    [{ item: 0, count: 2 }],
    [
      { item: 0, count: 1 },
      { item: 1, count: 2 },
    ],
  ]);
  // A ranking of the tests bounds a misfit by half of it until the set is scored.
  const at = indexOf(table, chained);
  expect([table.cost(1, at), table.ownSet(1, at)]).toEqual([expect.closeTo(2 * 0.05 + 1e-4, 12), 0]);
  expect(table.score(1, at)).toBe(true);
  expect(table.cost(1, at)).toBeCloseTo(2 * 0.1 + 1e-4, 12);
  expect(table.score(1, at)).toBe(false);
  // Who may not hang a set pays without end for it.
  expect([table.cost(0, at), table.ownSet(0, at)]).toEqual([Number.POSITIVE_INFINITY, -1]);
});

it('lists for a part the sets that somebody may hang within what is allowed, with all below them, and none that all have forgotten', () => {
  const table = tableOf();
  expect(table.part([2, 2, 0]).from).toHaveLength(table.size);
  // One chain beside the pair would be within it, and is nobody's.
  expect(namesIn(table, [1, 1, 0])).toEqual([bare, pair].map(named).toSorted());
  expect(namesIn(table, [0, 0, 0])).toEqual([named(bare)]);
  table.forget(0, [indexOf(table, pair)]);
  expect(namesIn(table, [1, 1, 0])).toEqual([named(bare)]);
  table.forget(0, [indexOf(table, bare)]);
  expect(namesIn(table, [1, 1, 0])).toEqual([named(bare)]);
  table.forget(1, [indexOf(table, bare)]);
  expect(namesIn(table, [1, 1, 0])).toEqual([]);
});

it('charges each lifter the own prices of all that a set takes', () => {
  const table = tableOf();
  const part = table.part([2, 2, 0]);
  const charges = [
    [0.01, 0.001, 5],
    [0.03, 0.002, 5],
  ];
  const [first, second] = table.charged(part, charges).map((row) => Array.from(row));
  const place = (one: GearSet) => [...part.from].indexOf(indexOf(table, one));
  expect(first![place(both)]).toBeCloseTo(0.3 + 2e-4 + 2 * 0.01, 12);
  expect(first![place(chained)]).toBe(Number.POSITIVE_INFINITY);
  expect(second![place(chained)]).toBeCloseTo(0.1 + 1e-4 + 0.03 + 2 * 0.002, 12);
  expect(second![place(bare)]).toBeCloseTo(0.8, 12);
});
