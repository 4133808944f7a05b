import type { RackGear } from './Gear.ts';

/**
 * How many sets `enumerateSetups` would list, without listing them: the elementary symmetric sums of the ways in which
 * each pair may hang, up to `mostPairs`, times the choices of every chain kind.
 */
export function countSets(
  { hookups, chains }: Pick<RackGear, 'hookups' | 'chains'>,
  usable: readonly number[],
  mostPairs: number,
): number {
  const ways = new Map<string, number>();
  for (const index of usable) {
    const { pairId } = hookups[index]!;
    ways.set(pairId, (ways.get(pairId) ?? 0) + 1);
  }
  const ofSize = [1, ...Array.from({ length: mostPairs }, () => 0)];
  for (const count of ways.values())
    for (let size = mostPairs; size > 0; size--) ofSize[size]! += count * ofSize[size - 1]!;
  const bandSets = ofSize.reduce((sum, count) => sum + count, 0);
  return chains.reduce((product, { pairs }) => product * (pairs + 1), bandSets);
}
