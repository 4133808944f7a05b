import type { GearSet } from './Gear.ts';

/** How many hookups of pairs, and pairs of chains, come off or go on from one set to the next at the same rack. */
export function setChanges(before: GearSet, after: GearSet): number {
  const off = before.hookups.filter((index) => !after.hookups.includes(index)).length;
  const on = after.hookups.filter((index) => !before.hookups.includes(index)).length;
  const chains = after.chainPairs.reduce(
    (sum, pairs, kind) => sum + Math.abs(pairs - (before.chainPairs[kind] ?? 0)),
    0,
  );
  return off + on + chains;
}
