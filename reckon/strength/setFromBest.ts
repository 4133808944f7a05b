import type { Best } from '#contract/records/lifters.ts';
import { type LoggedSet, nothingSeen } from '#contract/records/loggedSet.ts';

/** A best that was written down, as the single that it was: it acts on the estimate like a logged set. */
export function setFromBest(best: Best): LoggedSet {
  return {
    ...best,
    reps: 1,
    made: 1,
    ...nothingSeen,
    dayId: null,
    planNumber: null,
    order: 1000,
    loggedAt: `${best.doneOn}T00:00:00Z`,
    struckAt: null,
  };
}
