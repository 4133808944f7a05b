import type { DiscStock } from './plates.ts';

/**
 * Splits the discs between racks that load at the same time, so that whatever one rack takes the others can still load
 * theirs: an even share of each kind, and the pairs left over one each to the first racks.
 */
export function splitDiscs(discs: readonly DiscStock[], racks: number): DiscStock[][] {
  return Array.from({ length: racks }, (_, rack) =>
    discs.map(({ massKg, pairs }) => ({
      massKg,
      pairs: Math.floor(pairs / racks) + (rack < pairs % racks ? 1 : 0),
    })),
  );
}
