import type { Place } from '#contract/records/day.ts';

/** A lifter at a rack, with nothing set by hand and no start of their own. */
export function freshPlace(lifterId: string, rackId: string): Place {
  return { lifterId, rackId, start: null, byCoach: null, moreShare: 0, note: '' };
}
