import type { Aim } from './Aim.ts';
import type { SearchBounds } from './SearchRules.ts';

/**
 * The bounds that hold beside an aim. What the coach's percentages name themselves comes before a general bound: a share
 * on the bar below the least one lowers it, and a share on the bar beside one of bar and bands together says how much
 * hangs, so that no bound on bands is left.
 */
export function boundsFor(aim: Aim, bounds: SearchBounds): SearchBounds {
  if (aim.by !== 'percent') return bounds;
  const onBar = aim.targets.find(({ basis }) => basis === 'bar');
  if (onBar === undefined) return bounds;
  const leastBarShare = Math.min(bounds.leastBarShare, onBar.share);
  return aim.targets.length === 1
    ? { ...bounds, leastBarShare }
    : { ...bounds, leastBarShare, leastBandShare: 0, mostBandShare: Number.POSITIVE_INFINITY };
}
