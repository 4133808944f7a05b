import type { LnRatio, Share } from '../numeric/quantity.ts';
/**
 * The part of strength that is left for bar, bands and chains once the lifter's own body is carried, at a surplus of strength:
 * `bodyShare` is the share of the moved body in the mean load. By so much tiring counts: published shares of a maximum for so
 * many reps are shares of the bar, and hardly differ with strength (Nuzzo et al. 2024, Sports Med 54:303), so that who lifts
 * little beyond the body must not tire sooner for it.
 */
export function barPart(bodyShare: Share, surplusLn: LnRatio): number {
  return Math.max(0, 1 - bodyShare * Math.exp(-Math.max(0, surplusLn)));
}
