import type { AllocationLifter } from './Allocation.ts';
import type { GearSet } from './Gear.ts';
import { type SetLattice, setLattice, subLattice } from './setLattice.ts';
import type { SharedItem } from './sharedStock.ts';

/** Of nearly equal sets the one with fewer loops: what one hung pair costs, far below what any band is known to. */
export const HUNG_PAIR = 1e-4;
const FREE = Number.POSITIVE_INFINITY;
/** Parts of the table that are remembered; more than a search looks at in turn. */
const MOST_PARTS = 200;

/** For each turn and item what taking one costs extra. */
export type Charges = readonly (readonly number[])[];

/** How many of a shared piece a set takes. */
export interface Take {
  item: number;
  count: number;
}

/** The sets that may hang where only so much of each item is allowed. */
export interface TablePart {
  lattice: SetLattice;
  /** Where each of its sets stands in the whole table. */
  from: Int32Array;
}

/** What each set costs each lifter of a rack: a bound until it is scored. */
export function costTable(lifters: readonly AllocationLifter[], rack: number, items: readonly SharedItem[]) {
  const lattice = setLattice(lifters.flatMap(({ ranking }) => ranking.sets));
  const size = lattice.sets.length;
  const takes = lattice.sets.map((set) => takesOf(set, rack, items));
  // The same flat, for the loops that run most: of set i those at `takesFrom[i]` up to `takesFrom[i + 1] - 1`.
  const takesFrom = new Int32Array(size + 1);
  takes.forEach((taken, set) => {
    takesFrom[set + 1] = takesFrom[set]! + taken.length;
  });
  const takeItem = Int32Array.from(takes.flat(), ({ item }) => item);
  const takeCount = Int32Array.from(takes.flat(), ({ count }) => count);
  const isWithin = (set: number, allowed: readonly number[]): boolean => {
    for (let take = takesFrom[set]!; take < takesFrom[set + 1]!; take++)
      if (takeCount[take]! > allowed[takeItem[take]!]!) return false;
    return true;
  };
  const priceOf = (turn: number, own: number, misfit: number) =>
    lifters[turn]!.weight * misfit + HUNG_PAIR * lifters[turn]!.ranking.sets[own]!.hookups.length;
  const rows = lifters.map(({ ranking }, turn) => {
    const cost = new Float64Array(size).fill(FREE);
    const owns = new Int32Array(size).fill(-1);
    ranking.sets.forEach((set, own) => {
      const at = lattice.indexOf(set);
      owns[at] = own;
      cost[at] = priceOf(turn, own, ranking.lowerBoundOf(own));
    });
    return { cost, owns, charged: new Float64Array(size) };
  });
  const isAlive = Uint8Array.from(lattice.sets, (_, set) =>
    rows.some(({ cost }) => cost[set]! < FREE) ? 1 : 0,
  );
  const parts = new Map<string, TablePart>();
  return {
    size,
    takes: (set: number): readonly Take[] => takes[set]!,
    cost: (turn: number, set: number) => rows[turn]!.cost[set]!,
    ownSet: (turn: number, set: number) => rows[turn]!.owns[set]!,
    setAt: (set: number): GearSet => lattice.sets[set]!,
    /** Replaces a bound by the exact cost; true where that changed it. */
    score(turn: number, set: number): boolean {
      const { cost, owns } = rows[turn]!;
      const own = owns[set]!;
      const exact = priceOf(turn, own, lifters[turn]!.ranking.scoreOf(own).misfit);
      const changed = exact > cost[set]! + 1e-12;
      cost[set] = exact;
      return changed;
    },
    /** Forgets the sets of one turn for good. */
    forget(turn: number, sets: Iterable<number>): void {
      for (const set of sets) {
        rows[turn]!.cost[set] = FREE;
        isAlive[set] = rows.some(({ cost }) => cost[set]! < FREE) ? 1 : 0;
      }
      parts.clear();
    },
    part(allowed: readonly number[]): TablePart {
      const key = allowed.join();
      const known = parts.get(key);
      if (known !== undefined) return known;
      const marked = new Uint8Array(size);
      for (let set = 0; set < size; set++) if (isAlive[set] === 1 && isWithin(set, allowed)) marked[set] = 1;
      const { from, ...part } = subLattice(lattice, marked);
      if (parts.size >= MOST_PARTS) parts.clear();
      const made = { lattice: part, from };
      parts.set(key, made);
      return made;
    },
    /** Costs of a part's sets with the charges for what they take; good until the next question. */
    charged({ from }: TablePart, charges: Charges): Float64Array[] {
      return rows.map(({ cost, charged: whole }, turn) => {
        const prices = charges[turn]!;
        const charged = whole.subarray(0, from.length);
        for (let at = 0; at < charged.length; at++) {
          const set = from[at]!;
          let sum = cost[set]!;
          if (sum < FREE)
            for (let take = takesFrom[set]!; take < takesFrom[set + 1]!; take++)
              sum += takeCount[take]! * prices[takeItem[take]!]!;
          charged[at] = sum;
        }
        return charged;
      });
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
