import type { Bounds } from '#contract/records/bounds.ts';
import type { Aim } from '#contract/records/day.ts';
import { percent } from '#contract/words/percent.ts';
import { boundsFor } from '#core/day/boundsFor.ts';

/** What the club's bounds come to beside an aim, in words: what the aim says itself is not held to them. */
export function boundsSentence(aim: Aim, bounds: Bounds): string {
  const { leastBarShare, leastBandShare, mostBandShare, mostPairs } = boundsFor(aim, bounds);
  const pairs = mostPairs === 1 ? '1 pair' : `${mostPairs} pairs`;
  const sure = `Where strength is not well known, proposals go by what is there ${Math.round(100 * bounds.strengthChance)} % of the time.`;
  if (mostBandShare === Number.POSITIVE_INFINITY)
    return `These percentages already say how much is on the bar and how much in bands; by the club's settings ${pairs} hang at most. ${sure}`;
  return `By the club's settings at least ${percent(leastBarShare)} of the maximum is on the bar; bands, where any hang, are ${percent(leastBandShare)} to ${percent(mostBandShare)} at lockout; ${pairs} at most. ${sure}`;
}
