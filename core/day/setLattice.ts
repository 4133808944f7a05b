import type { AllocationLifter } from './Allocation.ts';
import type { GearSet } from './Gear.ts';

/**
 * All sets that may hang at one rack, and every set on the way between two of them: taking one thing off leads from a
 * set to a smaller one. Changing from A to B is a path down to what they share and up again.
 */
export interface SetLattice {
  /** Smaller sets before larger ones. */
  sets: readonly GearSet[];
  /** For each set the sets with one thing less. */
  smaller: readonly (readonly number[])[];
  indexOf(set: GearSet): number;
}

export function setLattice(lifters: readonly AllocationLifter[]): SetLattice {
  const found = new Map<string, GearSet>();
  const open: GearSet[] = [];
  const visit = (set: GearSet) => {
    const key = keyOf(set);
    if (found.has(key)) return;
    found.set(key, set);
    open.push(set);
  };
  for (const { ranking } of lifters) ranking.sets.forEach(visit);
  for (let set = open.pop(); set !== undefined; set = open.pop()) oneThingLess(set).forEach(visit);
  const sets = [...found.values()].sort((a, b) => sizeOf(a) - sizeOf(b));
  const index = new Map(sets.map((set, i) => [keyOf(set), i]));
  const indexOf = (set: GearSet) => index.get(keyOf(set))!;
  return { sets, smaller: sets.map((set) => oneThingLess(set).map(indexOf)), indexOf };
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
