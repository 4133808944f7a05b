import { freshPlace } from '#contract/day/freshPlace.ts';
import type { Group, Place } from '#contract/records/day.ts';

/**
 * The group with that lifter at a rack, with what was kept of this place while the lifter was away. Who stood in the `earlier` order stands
 * before those who came later in it; everybody else comes last.
 */
export function comesTo(
  group: Group,
  lifterId: string,
  rackId: string,
  earlier: readonly string[] = [],
): Group {
  if (group.places.some((place) => place.lifterId === lifterId)) return group;
  const kept = group.away.find((place) => place.lifterId === lifterId) ?? freshPlace(lifterId, rackId);
  // What the coach fixed hangs on the rack where it was fixed.
  const byCoach = kept.rackId === rackId ? kept.byCoach : null;
  const later = earlier.includes(lifterId) ? earlier.slice(earlier.indexOf(lifterId) + 1) : [];
  const next = group.places.findIndex((place) => later.includes(place.lifterId));
  const at = next < 0 ? group.places.length : next;
  return {
    ...group,
    places: [...group.places.slice(0, at), { ...kept, rackId, byCoach }, ...group.places.slice(at)],
    away: group.away.filter((place) => place.lifterId !== lifterId),
  };
}

/** The group without that lifter, whose place is kept for when they come. */
export function isAway(group: Group, lifterId: string): Group {
  return {
    ...group,
    places: group.places.filter((place) => place.lifterId !== lifterId),
    away: [...group.away, ...group.places.filter((place) => place.lifterId === lifterId)],
  };
}

/** The group as it is now with these lifters where they were before: away with their place, or not in it. */
export function backFrom(now: Group, before: Group, lifterIds: readonly string[]): Group {
  const isOther = ({ lifterId }: Place) => !lifterIds.includes(lifterId);
  return {
    ...now,
    places: now.places.filter(isOther),
    away: [...now.away.filter(isOther), ...before.away.filter((place) => !isOther(place))],
  };
}

/** The group as another day begins with it: nobody is away yet. */
export function everybodyBack(group: Group): Group {
  return { ...group, places: [...group.places, ...group.away], away: [] };
}
