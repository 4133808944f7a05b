import type { BandCurve } from './BandCurve.ts';
import { tensionDifference } from './tensionDifference.ts';

export interface PairMismatch {
  /** How much more band a pulls than band b, as a share of their mean; null where one was not measured. */
  share: number | null;
  /** True when the share is known and beyond what is allowed: the bar would tilt. */
  flagged: boolean;
}

/** Whether the two bands of a pair pull alike. `allowedShare`: 0.05 by default of the club (assumption). */
export function pairMismatch(a: BandCurve, b: BandCurve, allowedShare: number): PairMismatch {
  const share = tensionDifference(a, b);
  return { share, flagged: share !== null && Math.abs(share) > allowedShare };
}
