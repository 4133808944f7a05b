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
  indexOf(set: GearSet): number;
}

/** The lattice that holds all of `wanted`. */
export function setLattice(wanted: Iterable<GearSet>): SetLattice {
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
