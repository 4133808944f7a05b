import type { KnownHow } from '#contract/records/knownHow.ts';
import type { Load } from '#core/load/Load.ts';
import type { LifterHeights } from './assembleHeights.ts';

/** How a load at both ends is known: no better than the bands that pull, and the heights they pull at. */
export function knownOfEnds(
  { bands, hungBands, chains }: Pick<Load, 'bands' | 'hungBands' | 'chains'>,
  { known, bottomSdM, lockoutSdM }: Pick<LifterHeights, 'known' | 'bottomSdM' | 'lockoutSdM'>,
  bandsMeasured: boolean,
): KnownHow {
  if (!bandsMeasured) return 'notMeasured';
  const byHeight = bands.length + hungBands.length + chains.length > 0;
  return byHeight && bottomSdM + lockoutSdM > 0 ? known : 'measured';
}
