import type { Group, Place } from '#contract/records/day.ts';
import type { Start } from '#contract/records/lift.ts';

/** From where one lifter of a group lifts: the start set for that lifter, else the group's. */
export function startOf(group: Pick<Group, 'start'>, place: Pick<Place, 'start'>): Start {
  return place.start ?? group.start;
}
