import type { GearSet } from './Gear.ts';

/**
 * All sets that may hang at one rack, and every set on the way between two of them: taking one thing off leads from a
 * set to a smaller one. Changing from A to B is a path down to what they share and up again.
 */
export interface SetLattice {
  /** Smaller sets before larger ones. */
  sets: readonly GearSet[];
  /** The sets with one thing less: of set i those at `edges[edgesOf[i]]` up to `edges[edgesOf[i + 1] - 1]`. */
  edges: Int32Array;
  edgesOf: Int32Array;
}

/** The lattice that holds all of `wanted`, and where each of them stands in it. */
export function setLattice(wanted: Iterable<GearSet>): SetLattice & { indexOf(set: GearSet): number } {
  const found = new Map<string, GearSet>();
  const open: GearSet[] = [];
  const visit = (set: GearSet) => {
    const key = keyOf(set);
    if (found.has(key)) return;
    found.set(key, set);
    open.push(set);
  };
  for (const set of wanted) visit(set);
  for (let set = open.pop(); set !== undefined; set = open.pop()) oneThingLess(set).forEach(visit);
  const sets = [...found.values()].sort((a, b) => sizeOf(a) - sizeOf(b));
  const index = new Map(sets.map((set, i) => [keyOf(set), i]));
  const indexOf = (set: GearSet) => index.get(keyOf(set))!;
  const smaller = sets.map((set) => oneThingLess(set).map(indexOf));
  const edgesOf = new Int32Array(sets.length + 1);
  smaller.forEach((below, i) => {
    edgesOf[i + 1] = edgesOf[i]! + below.length;
  });
  return { sets, edges: Int32Array.from(smaller.flat()), edgesOf, indexOf };
}

/** The part of a lattice that holds the sets marked with 1; `from` tells where each of its sets stands in the whole. */
export function subLattice(whole: SetLattice, marked: Uint8Array): SetLattice & { from: Int32Array } {
  const { edges, edgesOf } = whole;
  const kept = Uint8Array.from(marked);
  for (let set = kept.length - 1; set >= 0; set--) {
    if (kept[set] === 0) continue;
    for (let edge = edgesOf[set]!; edge < edgesOf[set + 1]!; edge++) kept[edges[edge]!] = 1;
  }
  const from: number[] = [];
  const at = new Int32Array(kept.length);
  for (let set = 0; set < kept.length; set++) if (kept[set] === 1) at[set] = from.push(set) - 1;
  const partEdgesOf = new Int32Array(from.length + 1);
  from.forEach((set, i) => {
    partEdgesOf[i + 1] = partEdgesOf[i]! + edgesOf[set + 1]! - edgesOf[set]!;
  });
  const partEdges = new Int32Array(partEdgesOf[from.length]!);
  from.forEach((set, i) => {
    const first = edgesOf[set]!;
    for (let edge = first; edge < edgesOf[set + 1]!; edge++)
      partEdges[partEdgesOf[i]! + edge - first] = at[edges[edge]!]!;
  });
  return {
    sets: from.map((set) => whole.sets[set]!),
    edges: partEdges,
    edgesOf: partEdgesOf,
    from: Int32Array.from(from),
  };
}

function oneThingLess({ hookups, chainPairs }: GearSet): GearSet[] {
  return [
    ...hookups.map((hookup) => ({ hookups: hookups.filter((other) => other !== hookup), chainPairs })),
    ...chainPairs.flatMap((pairs, kind) =>
      pairs === 0 ? [] : [{ hookups, chainPairs: chainPairs.with(kind, pairs - 1) }],
    ),
  ];
}

function sizeOf({ hookups, chainPairs }: GearSet): number {
  return hookups.length + chainPairs.reduce((sum, pairs) => sum + pairs, 0);
}

function keyOf({ hookups, chainPairs }: GearSet): string {
  return `${hookups.join()}/${chainPairs.join()}`;
}
