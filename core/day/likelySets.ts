import type { AllowedGear } from './allowedSets.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { oneMore } from './oneMore.ts';

/** Of each size so many of the best sets are grown on. */
const WIDTH = 24;

/**
 * Sets that are likely to be good, of a stock too large to try them all: from the bare bar on one more piece is hung on
 * the best sets of each size, as long as the best gets better. Proves nothing; `missOf` tells how far from the aim.
 */
export function likelySets(
  gear: RackGear,
  allowed: AllowedGear,
  missOf: (set: GearSet) => number,
  outOfTime: () => boolean,
): GearSet[] {
  const found: GearSet[] = [];
  let grown = [
    { set: { hookups: [], chainPairs: gear.chains.map(() => 0) } as GearSet, miss: Number.POSITIVE_INFINITY },
  ];
  let least = Number.POSITIVE_INFINITY;
  while (!outOfTime()) {
    const larger = new Map<string, GearSet>();
    for (const { set } of grown)
      for (const one of oneMore(gear, allowed, set))
        larger.set(`${one.hookups.join()}/${one.chainPairs.join()}`, one);
    const next = [...larger.values()]
      .map((set) => ({ set, miss: missOf(set) }))
      .sort((a, b) => a.miss - b.miss)
      .slice(0, WIDTH);
    found.push(...next.flatMap(({ set }) => (allowed.isAllowed(set) ? [set] : [])));
    if (next.length === 0 || next[0]!.miss >= least) break;
    least = next[0]!.miss;
    grown = next;
  }
  return found;
}
