import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { closedWalk, throughBounds, type WalkMemory, walkMemory } from './closedWalk.ts';
import { enumerateSetups } from './enumerateSetups.ts';
import type { GearSet } from './Gear.ts';
import { rotationChanges } from './handling.ts';
import { setChanges } from './setChanges.ts';
import { setLattice } from './setLattice.ts';
import { anyPair } from './tests/manyPieces.ts';

const TURNS = 3;
const chain = { massPerMetreKg: 8, lengthM: 1, attachBelowBarM: 0, count: 2 };
/** A rack with a lattice of all its sets. */
function rackOf(pairIds: readonly string[], chainPairs: readonly number[]) {
  const hookups = pairIds.map((pairId, i) => anyPair(pairId, `h${i}`));
  const chains = chainPairs.map((pairs, kind) => ({ chainPairId: `c${kind}`, chain, pairs }));
  const lattice = setLattice(enumerateSetups({ hookups, chains }));
  const newMemory = () => walkMemory(hookups.length, chains.length, lattice.sets.length, TURNS);
  return { lattice, newMemory };
}
type Rack = ReturnType<typeof rackOf>;
const racks = [rackOf(['p0', 'p0', 'p1'], [1]), rackOf([], [2, 1])];

const own = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000) },
  { weight: 1, arbitrary: fc.constant(Number.POSITIVE_INFINITY) },
);
const price = fc.integer({ min: -200, max: 200 }).map((n) => n / 1000);
const most = Math.max(...racks.map(({ lattice }) => lattice.sets.length));
/** What a turn's sets cost; now and then none may hang. */
const row = fc.oneof(
  { weight: 9, arbitrary: fc.array(own, { minLength: most, maxLength: most }) },
  { weight: 1, arbitrary: fc.constant(Array<number>(most).fill(Number.POSITIVE_INFINITY)) },
);
const cases = fc.record({
  rack: fc.constantFrom(...racks),
  rows: fc.array(row, { maxLength: TURNS }),
  changeCost: fc.constantFrom(0, 0.01, 0.1, 1),
  prices: fc.array(price, { minLength: 4, maxLength: 4 }),
});
const costsOf = ({ lattice }: Rack, rows: readonly (readonly number[])[]): Float64Array[] =>
  rows.map((row) => Float64Array.from(row.slice(0, lattice.sets.length)));
/** What an earlier walk left. */
function pricedMemory({ newMemory }: Rack, prices: readonly number[]): WalkMemory {
  const memory = newMemory();
  memory.hookups.forEach((_, i) => {
    memory.hookups[i] = prices[i]!;
  });
  memory.chains.forEach((_, i) => {
    memory.chains[i] = prices.at(-1 - i)!;
  });
  return memory;
}
const choicesOf = ({ lattice }: Rack, turns: readonly unknown[]) =>
  turns.reduce<number[][]>(
    (choices) => choices.flatMap((choice) => lattice.sets.map((_, i) => [...choice, i])),
    [[]],
  );
const never = () => {
  throw new Error('not asked');
};
/** Never enough; but its starts are parted fewer times than there are sets, or the walk does not end. */
const untilClosed = ({ lattice }: Rack) => {
  let asked = 0;
  return () => {
    if (++asked > lattice.sets.length) throw new Error('does not end');
    return false;
  };
};
/** What a rotation costs, back to its first set. */
const priceOf = (
  { lattice }: Rack,
  costs: readonly Float64Array[],
  changeCost: number,
  choice: readonly number[],
) =>
  choice.reduce((sum, set, turn) => sum + costs[turn]![set]!, 0) +
  changeCost * rotationChanges(choice.map((set) => lattice.sets[set]!));

it('finds as cheap a rotation as trying every choice of sets, and a bound to it when time is up', () => {
  fc.assert(
    fc.property(cases, ({ rack, rows, changeCost, prices }) => {
      const costs = costsOf(rack, rows);
      const tried = choicesOf(rack, costs).map((choice) => priceOf(rack, costs, changeCost, choice));
      const least = Math.min(...tried);
      const walked = (isEnough: () => boolean) =>
        closedWalk(rack.lattice, costs, changeCost, isEnough, pricedMemory(rack, prices));
      const [walk, hurried] = [walked(untilClosed(rack)), walked(() => true)];
      expect([walk === null, hurried === null]).toEqual(Array(2).fill(least === Number.POSITIVE_INFINITY));
      if (walk === null || hurried === null) return;
      expect(walk.cost).toBeCloseTo(least, 9);
      expect(priceOf(rack, costs, changeCost, walk.sets)).toBeCloseTo(least, 9);
      expect(hurried.cost).toBeLessThanOrEqual(least + 1e-9);
      expect(priceOf(rack, costs, changeCost, hurried.sets)).toBeGreaterThanOrEqual(least - 1e-9);
    }),
    { numRuns: 120 },
  );
});

it.each([
  ['a pair', rackOf(['p'], [])],
  ['a chain', rackOf([], [1])],
])(
  'promises too little of %s where it need not end as it began, learns prices that mend it, and closes where it must',
  (_, rack) => {
    const [either, bare, hung, dear] = [
      [0, 0],
      [0, Number.POSITIVE_INFINITY],
      [Number.POSITIVE_INFINITY, 0],
      [0, 0.15],
    ] as const;
    const walked = (turns: readonly (readonly number[])[], isEnough: () => boolean, memory: WalkMemory) =>
      closedWalk(rack.lattice, costsOf(rack, turns), 0.1, isEnough, memory)!.cost;
    // A change costs 0.1. Open at its end, each way needs one; a rotation needs two, or begins with what is dear.
    const cases = [
      { turns: [either, bare, hung], rotation: 0.2 },
      { turns: [either, hung, bare], rotation: 0.2 },
      { turns: [dear, hung], rotation: 0.15 },
    ];
    for (const { turns, rotation } of cases) {
      const memory = rack.newMemory();
      expect(walked(turns, () => true, memory)).toBeCloseTo(0.1, 12);
      for (let again = 0; again < 9; again++) walked(turns, () => true, memory);
      expect(walked(turns, () => true, memory)).toBeCloseTo(rotation, 12);
      expect(walked(turns, untilClosed(rack), rack.newMemory())).toBeCloseTo(rotation, 12);
    }
    // Only one set may begin.
    expect(walked([hung, bare, bare], never, rack.newMemory())).toBeCloseTo(0.2, 12);
  },
);

it('is exact through each set from any start to any end, what hangs there priced, and so below every rotation', () => {
  fc.assert(
    fc.property(cases, ({ rack, rows, changeCost, prices }) => {
      fc.pre(rows.length > 0);
      const { lattice } = rack;
      const costs = costsOf(rack, rows);
      const memory = pricedMemory(rack, prices);
      const hung = ({ hookups, chainPairs }: GearSet) =>
        hookups.reduce((sum, index) => sum + memory.hookups[index]!, 0) +
        chainPairs.reduce((sum, pairs, kind) => sum + pairs * memory.chains[kind]!, 0);
      const changes = lattice.sets.map((a) => lattice.sets.map((b) => changeCost * setChanges(a, b)));
      const hungs = lattice.sets.map(hung);
      const ends = [...lattice.sets.keys()].filter((set) => costs[0]![set]! < Number.POSITIVE_INFINITY);
      const open = costs.map((row) => Float64Array.from(row).fill(Number.POSITIVE_INFINITY));
      const closed = costs.map((row) => Float64Array.from(row).fill(Number.POSITIVE_INFINITY));
      for (const choice of choicesOf(rack, costs)) {
        const rotation = priceOf(rack, costs, changeCost, choice);
        if (rotation === Number.POSITIVE_INFINITY) continue;
        const [first, last] = [choice[0]!, choice.at(-1)!];
        const oneWay = rotation - changes[last]![first]! - hungs[first]!;
        const walk = Math.min(...ends.map((end) => oneWay + changes[last]![end]! + hungs[end]!));
        choice.forEach((set, turn) => {
          open[turn]![set] = Math.min(open[turn]![set]!, walk);
          closed[turn]![set] = Math.min(closed[turn]![set]!, rotation);
        });
      }
      throughBounds(lattice, costs, changeCost, memory).forEach((bounds, turn) => {
        bounds.forEach((bound, set) => {
          if (open[turn]![set] === Number.POSITIVE_INFINITY) expect(bound).toBe(Number.POSITIVE_INFINITY);
          else expect(bound).toBeCloseTo(open[turn]![set]!, 9);
          expect(bound).toBeLessThanOrEqual(closed[turn]![set]! + 1e-9);
        });
      });
    }),
    { numRuns: 60 },
  );
});
