import type { AllocationInput, AllocationLifter } from './Allocation.ts';
import { closedWalk, throughBounds, type Walk } from './closedWalk.ts';
import type { GearSet } from './Gear.ts';
import { handlingWeight, rotationChanges } from './handling.ts';
import { oneSetWalk } from './oneSetWalk.ts';
import type { SetupRanking } from './SetupRanking.ts';
import { setLattice } from './setLattice.ts';
import type { SharedItem } from './sharedStock.ts';

/** Of nearly equal sets the one with fewer loops: what one hung pair costs, far below what any band is known to. */
export const HUNG_PAIR = 1e-4;
/** From this pull of the slider on, one set for the whole rack is a rule. */
const ONE_SET = 1;
const FREE = Number.POSITIVE_INFINITY;
/** Tables are made anew only when at least a tenth of the sets can be forgotten. */
const WORTH_REBUILDING = 0.9;
const SCORED_FIRST = 60;

/** A full rotation at one rack. */
export interface RackPlan {
  /** Misfits, hung pairs, handling and charges. */
  charged: number;
  /** The same without charges. */
  cost: number;
  /** For each turn the index of the set in the lifter's own ranking. */
  sets: number[];
  /** For each turn and item how many are taken, and for each item the most at once. */
  takes: number[][];
  most: number[];
}

/** For each turn and item what taking one costs extra. */
export type Charges = readonly (readonly number[])[];

/** Finds the cheapest rotation at one rack, whatever is allowed and charged. */
export interface RackPlans {
  /** Indices into the allocation's lifters, in lifting order. */
  turns: readonly number[];
  /** `allowed`: the most of each item that may hang. Null where somebody has no allowed set. */
  cheapest(allowed: readonly number[], charges: Charges): RackPlan | null;
  /** Forgets for good every set of a turn with which no rotation stays below `most` at these charges. */
  forget(charges: Charges, most: number): void;
}

export function rackPlans(input: AllocationInput, rack: number, items: readonly SharedItem[]): RackPlans {
  const turns = input.lifters.flatMap((lifter, index) => (lifter.rack === rack ? [index] : []));
  const lifters = turns.map((index) => input.lifters[index]!);
  const changeCost = handlingWeight(input.oneSetPull) * input.bandChangeMinutes;
  const free = lifters.flatMap(({ setFixed }, turn) => (setFixed ? [] : [turn]));
  const asOne = input.oneSetPull >= ONE_SET && free.length > 1;
  for (const { ranking } of lifters) scoreBest(ranking);
  const everything = items.map(() => FREE);
  let table = costTable(
    lifters,
    lifters.map(({ ranking }) => [...ranking.sets.keys()]),
    rack,
    items,
  );

  let listed = lifters.reduce((sum, { ranking }) => sum + ranking.sets.length, 0);

  return {
    turns,
    cheapest(allowed, charges) {
      for (;;) {
        const costs = table.charged(allowed, charges);
        const walk = asOne
          ? oneSetWalk(table.lattice, costs, changeCost, free)
          : closedWalk(table.lattice, costs, changeCost);
        if (walk === null) return null;
        if (!walk.sets.map((set, turn) => table.score(turn, set)).includes(true)) return planOf(walk);
      }
    },
    forget(charges, most) {
      // Sets that all must take together are judged together by the walk itself.
      if (asOne || turns.length === 0) return;
      const costs = table.charged(everything, charges);
      const bounds = throughBounds(table.lattice, costs, changeCost);
      const kept = bounds.map((bound, turn) =>
        table
          .ownSets(turn)
          .filter(({ at }) => bound[at]! < most)
          .map(({ own }) => own),
      );
      const left = kept.reduce((sum, sets) => sum + sets.length, 0);
      if (left > WORTH_REBUILDING * listed) return;
      table = costTable(lifters, kept, rack, items);
      listed = left;
    },
  };

  function planOf({ cost, sets }: Walk): RackPlan {
    const takes = sets.map((set) =>
      items.map((_, item) => table.takes(set).find((one) => one.item === item)?.count ?? 0),
    );
    const own = sets.reduce((sum, set, turn) => sum + table.cost(turn, set), 0);
    return {
      charged: cost,
      cost: own + changeCost * rotationChanges(sets.map((set) => table.lattice.sets[set]!)),
      sets: sets.map((set, turn) => table.ownSet(turn, set)),
      takes,
      most: items.map((_, item) => Math.max(0, ...takes.map((counts) => counts[item]!))),
    };
  }
}

/**
 * Scores the best sets in order of misfit, which lifts the bounds of all others to the last of them: without it the
 * walk would ask for one optimistic set after another.
 */
function scoreBest(ranking: SetupRanking): void {
  for (let count = 0; count < SCORED_FIRST; count++) ranking.next();
}

interface Take {
  item: number;
  count: number;
}

/** What each set costs each lifter of a rack: a bound until it is scored. `listed`: sets of each lifter's own ranking. */
function costTable(
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
