import type { BuiltBox } from '#contract/day/boxHeights.ts';
import type { Start } from '#contract/records/lift.ts';
import { usualHeightM } from './startHeights.ts';

/** A way to begin at its usual height, a box at the middle one of those that can be built. */
export function startOfWay(way: Start['way'], built: readonly BuiltBox[]): Start {
  const middleBox = way === 'box' ? built[Math.floor(built.length / 2)] : undefined;
  return { way, heightM: middleBox?.heightM ?? usualHeightM[way] };
}
