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
 * and up by putting on. The rotation must end where it began: all starts are walked at once, ending at any of them; if
 * the cheapest walk does not end at its own start, the starts are split at something that hangs at one end and not at
 * the other, and both parts are walked, the cheaper first. When time is up before, `cost` is what no rotation goes below,
 * and `sets` are the cheapest rotation from the start of the walk that promised most.
 */
export function closedWalk(
  lattice: SetLattice,
  costs: readonly Float64Array[],
  changeCost: number,
  outOfTime: () => boolean,
): Walk | null {
  if (costs.length <= 1 || changeCost === 0) return ownBest(costs);
  const walk = walker(lattice, costs, changeCost);
  const [first] = costs;
  const all = Int32Array.from([...first!.keys()].filter((set) => first![set]! < Number.POSITIVE_INFINITY));
  const open = [walk(all)].filter((one) => one !== null);
  for (;;) {
    const best = open.reduce<OpenWalk | null>(
      (least, one) => (least === null || one.cost < least.cost ? one : least),
      null,
    );
    if (best === null || best.end === best.sets[0]) return best;
    if (outOfTime()) {
      const closed = walk(Int32Array.of(best.sets[0]!));
      return { cost: best.cost, sets: closed!.sets };
    }
    open.splice(open.indexOf(best), 1);
    for (const starts of splitStarts(lattice, best)) {
      const part = walk(starts);
      if (part !== null) open.push(part);
    }
  }
}

/** A walk from one of `starts` through all turns to `end`, another of them perhaps. */
interface OpenWalk extends Walk {
  starts: Int32Array;
  end: number;
}

function splitStarts({ sets }: SetLattice, { starts, sets: [start], end }: OpenWalk): Int32Array[] {
  const [a, b] = [sets[start!]!, sets[end]!];
  const hookup = [...a.hookups, ...b.hookups].find(
    (one) => a.hookups.includes(one) !== b.hookups.includes(one),
  );
  const kind = a.chainPairs.findIndex((pairs, one) => pairs !== b.chainPairs[one]);
  const isIn = (index: number) =>
    hookup === undefined
      ? sets[index]!.chainPairs[kind]! >= Math.max(a.chainPairs[kind]!, b.chainPairs[kind]!)
      : sets[index]!.hookups.includes(hookup);
  return [starts.filter(isIn), starts.filter((index) => !isIn(index))];
}

/**
 * For each turn and set a cost that no rotation with that set at that turn goes below: the cheapest walk from the first
 * turn to the last through it, the change back left out.
 */
export function throughBounds(
  lattice: SetLattice,
  costs: readonly Float64Array[],
  changeCost: number,
): Float64Array[] {
  const forward = sums(lattice, costs, changeCost);
  const backward = sums(lattice, costs.toReversed(), changeCost).toReversed();
  return costs.map((cost, turn) =>
    cost.map((own, set) =>
      own < Number.POSITIVE_INFINITY ? forward[turn]![set]! + backward[turn]![set]! - own : own,
    ),
  );
}

/** For each turn and set the cheapest walk from the first turn that ends there. */
function sums(lattice: SetLattice, costs: readonly Float64Array[], changeCost: number): Float64Array[] {
  const [first, ...rest] = costs;
  const found = [Float64Array.from(first!)];
  for (const cost of rest) {
    const value = Float64Array.from(found.at(-1)!);
    spread(lattice, value, null, changeCost);
    found.push(value.map((sum, set) => sum + cost[set]!));
  }
  return found;
}

/** Without changes to pay, or with one turn only, everybody takes their own best. */
function ownBest(costs: readonly Float64Array[]): Walk | null {
  const sets = costs.map(cheapestSet);
  const cost = sets.reduce((sum, set, turn) => sum + costs[turn]![set]!, 0);
  return cost < Number.POSITIVE_INFINITY ? { cost, sets } : null;
}

function cheapestSet(cost: Float64Array): number {
  let least = 0;
  for (let set = 1; set < cost.length; set++) if (cost[set]! < cost[least]!) least = set;
  return least;
}

/** Walks from a group of starts through all turns and back to the group; the working arrays are made once. */
function walker(lattice: SetLattice, costs: readonly Float64Array[], changeCost: number) {
  const size = lattice.sets.length;
  const turns = costs.length;
  const value = new Float64Array(size);
  const from = Array.from({ length: turns + 1 }, () => new Int32Array(size));
  return (starts: Int32Array): OpenWalk | null => {
    value.fill(Number.POSITIVE_INFINITY);
    for (const start of starts) value[start] = costs[0]![start]!;
    for (let turn = 1; turn <= turns; turn++) {
      const source = from[turn]!;
      for (let set = 0; set < size; set++) source[set] = set;
      spread(lattice, value, source, changeCost);
      if (turn < turns) for (let set = 0; set < size; set++) value[set]! += costs[turn]![set]!;
    }
    let end = -1;
    for (const start of starts) if (end < 0 || value[start]! < value[end]!) end = start;
    if (end < 0 || value[end] === Number.POSITIVE_INFINITY) return null;
    const sets: number[] = [];
    for (let turn = turns, at = end; turn > 0; turn--) {
      at = from[turn]![at]!;
      sets.unshift(at);
    }
    return { cost: value[end]!, sets, starts, end };
  };
}

/** Least of `value` plus the changes from there, for every set at once; `source` tells from which set. */
function spread(
  { edges, edgesOf }: SetLattice,
  value: Float64Array,
  source: Int32Array | null,
  changeCost: number,
): void {
  for (let set = value.length - 1; set >= 0; set--) {
    const less = value[set]! + changeCost;
    if (less === Number.POSITIVE_INFINITY) continue;
    for (let edge = edgesOf[set]!; edge < edgesOf[set + 1]!; edge++) {
      const below = edges[edge]!;
      if (less >= value[below]!) continue;
      value[below] = less;
      if (source) source[below] = source[set]!;
    }
  }
  for (let set = 0; set < value.length; set++) {
    for (let edge = edgesOf[set]!; edge < edgesOf[set + 1]!; edge++) {
      const below = edges[edge]!;
      const more = value[below]! + changeCost;
      if (more >= value[set]!) continue;
      value[set] = more;
      if (source) source[set] = source[below]!;
    }
  }
}
