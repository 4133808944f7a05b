import { isSameStart } from '#contract/day/isSameStart.ts';
import type { StartAsked } from '#contract/records/method.ts';

/** Whether a plan asks twice for the same start; a box of one's own is the same at the same depth. */
export function isSameStartAsked(a: StartAsked, b: StartAsked): boolean {
  if (a.way === 'ownBox')
    return b.way === 'ownBox' && Math.abs(a.aboveParallelM - b.aboveParallelM) < ASKED_TO_M;
  return b.way !== 'ownBox' && isSameStart(a, b);
}

/** Depths are asked for to a millimetre. */
const ASKED_TO_M = 0.001;
