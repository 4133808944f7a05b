import type { AllocationInput } from './Allocation.ts';
import { closedWalk, type Walk } from './closedWalk.ts';
import { handlingWeight, rotationChanges } from './handling.ts';
import { type SetLattice, setLattice } from './setLattice.ts';
import type { SharedItem } from './sharedStock.ts';

/** Of nearly equal sets the one with fewer loops: what one hung pair costs, far below what any band is known to. */
export const HUNG_PAIR = 1e-4;
/** From this pull of the slider on, one set for the whole rack is a rule. */
const ONE_SET = 1;

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

/** Finds the cheapest rotation at one rack, whatever is allowed and charged. */
export interface RackPlans {
  /** Indices into the allocation's lifters, in lifting order. */
  turns: readonly number[];
  /**
   * `allowed`: the most of each item that may hang; `charges`: for each turn and item what taking one costs extra.
   * Null where somebody has no allowed set.
   */
  cheapest(allowed: readonly number[], charges: readonly (readonly number[])[]): RackPlan | null;
}

export function rackPlans(input: AllocationInput, rack: number, items: readonly SharedItem[]): RackPlans {
  const turns = input.lifters.flatMap((lifter, index) => (lifter.rack === rack ? [index] : []));
  const lifters = turns.map((index) => input.lifters[index]!);
  const lattice = setLattice(lifters);
  const taken = takesOf(lattice, rack, items);
  const changeCost = handlingWeight(input.oneSetPull) * input.bandChangeMinutes;
  const base = lifters.map(({ ranking, weight }) => {
    const cost = new Float64Array(lattice.sets.length).fill(Number.POSITIVE_INFINITY);
    const own = new Int32Array(lattice.sets.length).fill(-1);
    const priceOf = (index: number, misfit: number) =>
      weight * misfit + HUNG_PAIR * ranking.sets[index]!.hookups.length;
    ranking.sets.forEach((set, index) => {
      const at = lattice.indexOf(set);
      own[at] = index;
      cost[at] = priceOf(index, ranking.lowerBoundOf(index));
    });
    /** Replaces a bound by the exact cost; true where that changed it. */
    const score = (at: number): boolean => {
      const exact = priceOf(own[at]!, ranking.scoreOf(own[at]!).misfit);
      const changed = exact > cost[at]! + 1e-12;
      cost[at] = exact;
      return changed;
    };
    return { cost, own, score };
  });
  const free = lifters.flatMap(({ setFixed }, turn) => (setFixed ? [] : [turn]));
  const asOne = input.oneSetPull >= ONE_SET && free.length > 1;
  const charged = lifters.map(() => new Float64Array(lattice.sets.length));

  return {
    turns,
    cheapest(allowed, charges) {
      for (;;) {
        base.forEach(({ cost }, turn) => addCharges(charged[turn]!, cost, taken, allowed, charges[turn]!));
        const walk = asOne
          ? oneSetWalk(lattice, charged, changeCost, free)
          : closedWalk(lattice, charged, changeCost);
        if (walk === null) return null;
        const surprises = walk.sets.map((set, turn) => base[turn]!.score(set));
        if (!surprises.includes(true)) return planOf(walk, items.length);
      }
    },
  };

  function planOf({ cost, sets }: Walk, itemCount: number): RackPlan {
    const takes = sets.map((set) => {
      const counts: number[] = Array.from({ length: itemCount }, () => 0);
      for (const { item, count } of taken[set]!) counts[item] = count;
      return counts;
    });
    return {
      charged: cost,
      cost:
        sets.reduce((sum, set, turn) => sum + base[turn]!.cost[set]!, 0) +
        changeCost * rotationChanges(sets.map((set) => lattice.sets[set]!)),
      sets: sets.map((set, turn) => base[turn]!.own[set]!),
      takes,
      most: Array.from({ length: itemCount }, (_, item) => Math.max(0, ...takes.map((counts) => counts[item]!))),
    };
  }
}

/** What each set takes of the items that racks share. */
function takesOf(
  lattice: SetLattice,
  rack: number,
  items: readonly SharedItem[],
): { item: number; count: number }[][] {
  return lattice.sets.map(({ hookups, chainPairs }) =>
    items.flatMap(({ users }, item) => {
      const user = users.find((one) => one.rack === rack);
      if (user === undefined) return [];
      const count =
        user.chain === null
          ? hookups.filter((index) => user.hookups.includes(index)).length
          : chainPairs[user.chain]!;
      return count > 0 ? [{ item, count }] : [];
    }),
  );
}

function addCharges(
  into: Float64Array,
  cost: Float64Array,
  taken: readonly (readonly { item: number; count: number }[])[],
  allowed: readonly number[],
  charges: readonly number[],
): void {
  for (let set = 0; set < cost.length; set++) {
    let sum = cost[set]!;
    for (const { item, count } of taken[set]!) {
      sum += count > allowed[item]! ? Number.POSITIVE_INFINITY : count * charges[item]!;
    }
    into[set] = sum;
  }
}

/** All free lifters of the rack take the same set; those whose set the coach fixed keep theirs. */
function oneSetWalk(
  lattice: SetLattice,
  costs: readonly Float64Array[],
  changeCost: number,
  free: readonly number[],
): Walk | null {
  const fixedSets = costs.map((cost, turn) =>
    free.includes(turn) ? -1 : cost.findIndex((value) => value < Number.POSITIVE_INFINITY),
  );
  let best: Walk | null = null;
  for (let set = 0; set < lattice.sets.length; set++) {
    const sets = fixedSets.map((fixed) => (fixed >= 0 ? fixed : set));
    const own = sets.reduce((sum, one, turn) => sum + costs[turn]![one]!, 0);
    if (!(own < (best?.cost ?? Number.POSITIVE_INFINITY))) continue;
    const cost = own + changeCost * rotationChanges(sets.map((one) => lattice.sets[one]!));
    if (best === null || cost < best.cost) best = { cost, sets };
  }
  return best;
}
