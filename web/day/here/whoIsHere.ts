import { freshPlace } from '#contract/day/freshPlace.ts';
import type { Day, Group, Place } from '#contract/records/day.ts';

/** The group with that lifter at a rack: last in its order, with what was kept of this place while the lifter was away. */
export function comesTo(group: Group, lifterId: string, rackId: string): Group {
  if (group.places.some((place) => place.lifterId === lifterId)) return group;
  const kept = group.away.find((place) => place.lifterId === lifterId) ?? freshPlace(lifterId, rackId);
  // What the coach fixed hangs on the rack where it was fixed.
  const byCoach = kept.rackId === rackId ? kept.byCoach : null;
  return {
    ...group,
    places: [...group.places, { ...kept, rackId, byCoach }],
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

/** The group of the newest earlier day that did the same lift with anybody, the same kind of work before another. */
export function lastTime(
  days: readonly Day[],
  day: Pick<Day, 'id' | 'date'>,
  group: Group,
): { date: string; group: Group } | null {
  const did = days
    .filter(({ id, date }) => id !== day.id && date < day.date)
    .sort((a, b) => b.date.localeCompare(a.date))
    .flatMap(({ date, groups }) =>
      groups
        .filter(({ lift, places }) => lift === group.lift && places.length > 0)
        .map((group) => ({ date, group })),
    );
  return did.find((then) => then.group.work === group.work) ?? did[0] ?? null;
}

/** The rack where somebody who comes belongs: the kept one, that of the last time, or the one with the fewest lifters. */
export function rackFor(
  group: Group,
  lifterId: string,
  rackIds: readonly string[],
  before: Group | null,
): string | null {
  const known = [...group.away, ...(before?.places ?? [])].find((place) => place.lifterId === lifterId);
  if (known && rackIds.includes(known.rackId)) return known.rackId;
  const crowd = (rackId: string) => group.places.filter((place) => place.rackId === rackId).length;
  return [...rackIds].sort((a, b) => crowd(a) - crowd(b))[0] ?? null;
}
