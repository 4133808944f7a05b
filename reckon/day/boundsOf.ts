import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type Bounds, bounds, usualBounds } from '#contract/records/bounds.ts';
import type { Group } from '#contract/records/day.ts';

const names = Object.keys(bounds.shape) as (keyof Bounds)[];

/** What proposals of a group keep to: its own bounds, else the club's. */
export function boundsOf(records: Pick<ClubRecords, 'club'>, group: Pick<Group, 'bounds'>): Bounds {
  const settled: Partial<Bounds> | undefined = group.bounds ?? records.club[0];
  // An undo can bring back a day or a club from before a field existed; then the usual value holds.
  return Object.fromEntries(
    names.map((name) => [name, settled?.[name] ?? usualBounds[name]]),
  ) as unknown as Bounds;
}
