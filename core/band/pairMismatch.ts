import type { BandCurve } from './BandCurve.ts';
import { tensionDifference } from './tensionDifference.ts';

export type PairMismatch =
  /** One of them was not measured, so nothing is known of it. */
  | { share: null; flagged: false }
  /** How much more band a pulls than band b, as a share of their mean; flagged beyond what is allowed: the bar would tilt. */
  | { share: number; flagged: boolean };

/** Whether the two bands of a pair pull alike. `allowedShare`: 0.05 by default of the club (assumption). */
export function pairMismatch(a: BandCurve, b: BandCurve, allowedShare: number): PairMismatch {
  const share = tensionDifference(a, b);
  return share === null ? { share, flagged: false } : { share, flagged: Math.abs(share) > allowedShare };
}
