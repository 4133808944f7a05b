import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type Bounds, usualBounds } from '#contract/records/bounds.ts';
import type { Group } from '#contract/records/day.ts';

/** What proposals of a group keep to: its own bounds, else the club's. */
export function boundsOf(records: Pick<ClubRecords, 'club'>, group: Pick<Group, 'bounds'>): Bounds {
  // A day or a club that an undo brought back from before a field was there has the usual one.
  return { ...usualBounds, ...(group.bounds ?? records.club[0]) };
}
