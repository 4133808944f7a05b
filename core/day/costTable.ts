import type { AllocationLifter } from './Allocation.ts';
import type { GearSet } from './Gear.ts';
import { setLattice } from './setLattice.ts';
import type { SharedItem } from './sharedStock.ts';

/** Of nearly equal sets the one with fewer loops: what one hung pair costs, far below what any band is known to. */
export const HUNG_PAIR = 1e-4;
const FREE = Number.POSITIVE_INFINITY;

/** For each turn and item what taking one costs extra. */
export type Charges = readonly (readonly number[])[];

/** How many of a shared piece a set takes. */
export interface Take {
  item: number;
  count: number;
}

/** What each set costs each lifter of a rack: a bound until it is scored. `listed`: sets of each lifter's own ranking. */
export function costTable(
  lifters: readonly AllocationLifter[],
  listed: readonly (readonly number[])[],
  rack: number,
  items: readonly SharedItem[],
) {
  const lattice = setLattice(
    lifters.flatMap(({ ranking }, turn) => listed[turn]!.map((own) => ranking.sets[own]!)),
  );
  const size = lattice.sets.length;
  const takes = lattice.sets.map((set) => takesOf(set, rack, items));
  const priceOf = (turn: number, own: number, misfit: number) =>
    lifters[turn]!.weight * misfit + HUNG_PAIR * lifters[turn]!.ranking.sets[own]!.hookups.length;
  const rows = lifters.map(({ ranking }, turn) => {
    const cost = new Float64Array(size).fill(FREE);
    const owns = new Int32Array(size).fill(-1);
    for (const own of listed[turn]!) {
      const at = lattice.indexOf(ranking.sets[own]!);
      owns[at] = own;
      cost[at] = priceOf(turn, own, ranking.lowerBoundOf(own));
    }
    return { cost, owns, charged: new Float64Array(size) };
  });
  return {
    lattice,
    takes: (set: number): readonly Take[] => takes[set]!,
    cost: (turn: number, set: number) => rows[turn]!.cost[set]!,
    ownSet: (turn: number, set: number) => rows[turn]!.owns[set]!,
    ownSets: (turn: number) => [...rows[turn]!.owns].flatMap((own, at) => (own < 0 ? [] : [{ own, at }])),
    /** Replaces a bound by the exact cost; true where that changed it. */
    score(turn: number, set: number): boolean {
      const { cost, owns } = rows[turn]!;
      const own = owns[set]!;
      const exact = priceOf(turn, own, lifters[turn]!.ranking.scoreOf(own).misfit);
      const changed = exact > cost[set]! + 1e-12;
      cost[set] = exact;
      return changed;
    },
    charged(allowed: readonly number[], charges: Charges): Float64Array[] {
      rows.forEach(({ cost, charged }, turn) => charge(charged, cost, takes, allowed, charges[turn]!));
      return rows.map(({ charged }) => charged);
    },
  };
}

/** What a set takes of the items that racks share. */
function takesOf({ hookups, chainPairs }: GearSet, rack: number, items: readonly SharedItem[]): Take[] {
  return items.flatMap(({ users }, item) => {
    const user = users.find((one) => one.rack === rack);
    if (user === undefined) return [];
    const count =
      user.chain === null
        ? hookups.filter((index) => user.hookups.includes(index)).length
        : chainPairs[user.chain]!;
    return count > 0 ? [{ item, count }] : [];
  });
}

function charge(
  into: Float64Array,
  cost: Float64Array,
  takes: readonly (readonly Take[])[],
  allowed: readonly number[],
  charges: readonly number[],
): void {
  for (let set = 0; set < cost.length; set++) {
    let sum = cost[set]!;
    if (sum < FREE)
      for (const { item, count } of takes[set]!)
        sum += count > allowed[item]! ? FREE : count * charges[item]!;
    into[set] = sum;
  }
}
