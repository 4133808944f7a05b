import type { SetLattice } from './setLattice.ts';

export interface Walk {
  cost: number;
  /** Index into the lattice's sets for each turn. */
  sets: number[];
}

/**
 * The cheapest full rotation at one rack: a set for each turn, so that `sum(cost) + changeCost * things taken off or
 * put on`, back to the first set, is least. Null where some turn has no allowed set (cost infinite).
 *
 * From one turn to the next the least cost over all sets spreads through the lattice in two sweeps, down by taking off
 * and up by putting on. Starts are tried in the order of a bound that leaves out one of the changes, until the bound
 * passes the best closed walk.
 */
export function closedWalk(
  lattice: SetLattice,
  costs: readonly Float64Array[],
  changeCost: number,
): Walk | null {
  const [first] = costs;
  const turns = costs.length;
  if (turns <= 1 || changeCost === 0) return ownBest(costs);
  const bounds = startBounds(lattice, costs, changeCost);
  const starts = [...first!.keys()].filter((set) => bounds[set]! < Number.POSITIVE_INFINITY);
  starts.sort((a, b) => bounds[a]! - bounds[b]! || a - b);
  let best: Walk | null = null;
  const walk = spreader(lattice, turns);
  for (const start of starts) {
    if (best !== null && bounds[start]! >= best.cost - 1e-12) break;
    const found = walk(costs, changeCost, start);
    if (found !== null && (best === null || found.cost < best.cost)) best = found;
  }
  return best;
}

/** Without changes to pay, or with one turn only, everybody takes their own best. */
function ownBest(costs: readonly Float64Array[]): Walk | null {
  const sets = costs.map((cost) =>
    cost.reduce((least, value, set) => (value < cost[least]! ? set : least), 0),
  );
  const cost = sets.reduce((sum, set, turn) => sum + costs[turn]![set]!, 0);
  return cost === Number.POSITIVE_INFINITY ? null : { cost, sets };
}

/** For each start the cheaper-than-possible cost of a rotation: without the change back, or without the first. */
function startBounds(lattice: SetLattice, costs: readonly Float64Array[], changeCost: number): Float64Array {
  const last = costs.length - 1;
  const chain = (order: readonly number[]) => {
    const value = Float64Array.from(costs[order[0]!]!);
    for (const turn of order.slice(1)) {
      spread(lattice, value, null, changeCost);
      for (let set = 0; set < value.length; set++) value[set]! += costs[turn]![set]!;
    }
    return value;
  };
  const others = Array.from({ length: last }, (_, i) => i + 1);
  const withoutBack = chain([...others.toReversed(), 0]);
  const withoutFirst = chain([...others, 0]);
  return withoutBack.map((value, set) => Math.max(value, withoutFirst[set]!));
}

/** Walks from one start through all turns and back; its working arrays are made once. */
function spreader(lattice: SetLattice, turns: number) {
  const size = lattice.sets.length;
  const value = new Float64Array(size);
  const from = Array.from({ length: turns + 1 }, () => new Int32Array(size));
  return (costs: readonly Float64Array[], changeCost: number, start: number): Walk | null => {
    value.fill(Number.POSITIVE_INFINITY);
    value[start] = costs[0]![start]!;
    for (let turn = 1; turn <= turns; turn++) {
      const source = from[turn]!;
      for (let set = 0; set < size; set++) source[set] = set;
      spread(lattice, value, source, changeCost);
      if (turn < turns) for (let set = 0; set < size; set++) value[set]! += costs[turn]![set]!;
    }
    if (value[start] === Number.POSITIVE_INFINITY) return null;
    const sets = [start];
    for (let turn = turns, at = start; turn > 1; turn--) {
      at = from[turn]![at]!;
      sets.splice(1, 0, at);
    }
    return { cost: value[start]!, sets };
  };
}

/** Least of `value` plus the changes from there, for every set at once; `source` tells from which set. */
function spread(
  { smaller }: SetLattice,
  value: Float64Array,
  source: Int32Array | null,
  changeCost: number,
): void {
  for (let set = smaller.length - 1; set >= 0; set--) {
    const less = value[set]! + changeCost;
    if (less === Number.POSITIVE_INFINITY) continue;
    for (const below of smaller[set]!) {
      if (less >= value[below]!) continue;
      value[below] = less;
      if (source) source[below] = source[set]!;
    }
  }
  for (let set = 0; set < smaller.length; set++) {
    for (const below of smaller[set]!) {
      const more = value[below]! + changeCost;
      if (more >= value[set]!) continue;
      value[set] = more;
      if (source) source[set] = source[below]!;
    }
  }
}
