import type { GearSet } from './Gear.ts';
import type { SetLattice } from './setLattice.ts';

export interface Walk {
  cost: number;
  /** Index into the lattice's sets for each turn. */
  sets: number[];
}

/** What is kept from one walk at a rack to the next. */
export interface WalkMemory {
  /** Prices on what hangs at the start and at the end of a walk, by hookup and by chain kind. */
  hookups: Float64Array;
  chains: Float64Array;
  /** Working arrays, for as many sets and turns as there can be. */
  value: Float64Array;
  price: Float64Array;
  from: Int32Array[];
  /** Each set's own place. */
  unmoved: Int32Array;
}

export function walkMemory(hookups: number, chains: number, sets: number, turns: number): WalkMemory {
  return {
    hookups: new Float64Array(hookups),
    chains: new Float64Array(chains),
    value: new Float64Array(sets),
    price: new Float64Array(sets),
    from: Array.from({ length: turns + 1 }, () => new Int32Array(sets)),
    unmoved: Int32Array.from({ length: sets }, (_, set) => set),
  };
}

/**
 * The cheapest full rotation at one rack: a set for each turn, so that `sum(cost) + changeCost * things taken off or
 * put on`, back to the first set, is least. Null where some turn has no allowed set (cost infinite).
 *
 * From one turn to the next the least cost over all sets spreads through the lattice in two sweeps, down by taking off
 * and up by putting on. The rotation must end where it began: all starts are walked at once, ending at any of them. What
 * hangs at the end is charged a price that it earns at the start, so that closed walks cost what they cost and others
 * do not: prices rise towards a walk that ends where it began. If one does not, the starts are split at something that
 * hangs at one end and not at the other, and both parts are walked, the cheaper first. Whenever `isEnough` says so
 * before, `cost` is what no rotation goes below, and `sets` are those of the walk that promised most. `memory` keeps
 * the prices for the next walk over nearly the same costs.
 */
export function closedWalk(
  lattice: SetLattice,
  costs: readonly Float64Array[],
  changeCost: number,
  isEnough: () => boolean,
  memory: WalkMemory,
): Walk | null {
  if (costs.length <= 1 || changeCost === 0) return ownBest(costs);
  const walk = walker(lattice, costs, changeCost, memory);
  const open = [walk(allowedStarts(costs[0]!))].filter((one) => one !== null);
  for (;;) {
    const best = open.reduce<OpenWalk | null>(
      (least, one) => (least === null || one.cost < least.cost ? one : least),
      null,
    );
    if (best === null || best.end === best.sets[0]) return best;
    raise(memory, lattice.sets[best.sets[0]!]!, lattice.sets[best.end]!, CLOSING_STEP * changeCost);
    if (isEnough()) return best;
    open.splice(open.indexOf(best), 1);
    for (const starts of splitStarts(lattice, best)) {
      const part = walk(starts);
      if (part !== null) open.push(part);
    }
  }
}

/** Sets that the first turn may have; a loop of its own, since it runs at every walk. */
function allowedStarts(cost: Float64Array): Int32Array {
  const starts = new Int32Array(cost.length);
  let count = 0;
  for (let set = 0; set < cost.length; set++)
    if (cost[set]! < Number.POSITIVE_INFINITY) starts[count++] = set;
  return starts.subarray(0, count);
}

/** By how much closing prices rise at once, as a share of what a change costs; only how fast it ends depends on it. */
const CLOSING_STEP = 0.25;

function raise(
  { hookups, chains }: Pick<WalkMemory, 'hookups' | 'chains'>,
  start: GearSet,
  end: GearSet,
  step: number,
): void {
  for (const index of start.hookups) hookups[index]! -= step;
  for (const index of end.hookups) hookups[index]! += step;
  end.chainPairs.forEach((pairs, kind) => {
    chains[kind]! += step * Math.sign(pairs - start.chainPairs[kind]!);
  });
}

function priceOf({ hookups, chains }: Pick<WalkMemory, 'hookups' | 'chains'>, set: GearSet): number {
  let sum = 0;
  for (const index of set.hookups) sum += hookups[index]!;
  for (let kind = 0; kind < chains.length; kind++) sum += chains[kind]! * set.chainPairs[kind]!;
  return sum;
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
 * For each turn and set a cost that no rotation with that set at that turn goes below: the cheapest walk through it from
 * any start to any end, what hangs there priced.
 */
export function throughBounds(
  lattice: SetLattice,
  costs: readonly Float64Array[],
  changeCost: number,
  memory: WalkMemory,
): Float64Array[] {
  const [first, ...rest] = costs;
  const priced = Float64Array.from(lattice.sets, (set) => priceOf(memory, set));
  const forward: Float64Array[] = [first!.map((own, set) => own - priced[set]!)];
  for (const cost of rest) forward.push(onwards(lattice, forward.at(-1)!, cost, changeCost));
  let after: Float64Array = priced.map((price, set) =>
    first![set]! < Number.POSITIVE_INFINITY ? price : first![set]!,
  );
  const bounds: Float64Array[] = [];
  for (let turn = costs.length - 1; turn >= 0; turn--) {
    const cost = costs[turn]!;
    after = onwards(lattice, after, cost, changeCost);
    const here = after;
    bounds.unshift(
      cost.map((own, set) =>
        own < Number.POSITIVE_INFINITY ? forward[turn]![set]! + here[set]! - own : own,
      ),
    );
  }
  return bounds;
}

/** The cheapest way to each set of the next turn, its own cost counted. */
function onwards(
  lattice: SetLattice,
  before: Float64Array,
  cost: Float64Array,
  changeCost: number,
): Float64Array {
  const value = Float64Array.from(before);
  spread(lattice, value, null, changeCost);
  for (let set = 0; set < value.length; set++) value[set]! += cost[set]!;
  return value;
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
function walker(lattice: SetLattice, costs: readonly Float64Array[], changeCost: number, memory: WalkMemory) {
  const size = lattice.sets.length;
  const turns = costs.length;
  const value = memory.value.subarray(0, size);
  const price = memory.price.subarray(0, size);
  const unmoved = memory.unmoved.subarray(0, size);
  const { from } = memory;
  return (starts: Int32Array): OpenWalk | null => {
    value.fill(Number.POSITIVE_INFINITY);
    for (const start of starts) {
      price[start] = priceOf(memory, lattice.sets[start]!);
      value[start] = costs[0]![start]! - price[start];
    }
    for (let turn = 1; turn <= turns; turn++) {
      const source = from[turn]!;
      source.set(unmoved);
      spread(lattice, value, source, changeCost);
      if (turn < turns) for (let set = 0; set < size; set++) value[set]! += costs[turn]![set]!;
    }
    let [end, least] = [-1, Number.POSITIVE_INFINITY];
    for (const start of starts) {
      const cost = value[start]! + price[start]!;
      if (cost < least) [end, least] = [start, cost];
    }
    if (end < 0) return null;
    const sets: number[] = [];
    for (let turn = turns, at = end; turn > 0; turn--) {
      at = from[turn]![at]!;
      sets.unshift(at);
    }
    return { cost: least, sets, starts, end };
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
