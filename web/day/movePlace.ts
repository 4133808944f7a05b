import type { Place } from '#contract/records/day.ts';

/**
 * Puts a lifter at a place in a rack's lifting order (0 lifts first). A group's places stand in one list; a rack's order is
 * that of its own lifters in the list, so the other racks keep theirs.
 */
export function movePlace(
  places: readonly Place[],
  lifterId: string,
  rackId: string,
  order: number,
): Place[] {
  const moved = places.find((place) => place.lifterId === lifterId);
  if (moved === undefined) return [...places];
  const others = places.filter((place) => place !== moved);
  const onRack = others.filter((place) => place.rackId === rackId);
  const next = onRack[Math.max(0, order)];
  // What the coach fixed hangs on the rack where it was fixed.
  const placed = { ...moved, rackId, byCoach: moved.rackId === rackId ? moved.byCoach : null };
  if (next === undefined) return [...others, placed];
  const at = others.indexOf(next);
  return [...others.slice(0, at), placed, ...others.slice(at)];
}

/** The lifters of one rack in lifting order. */
export function onRack(places: readonly Place[], rackId: string): Place[] {
  return places.filter((place) => place.rackId === rackId);
}

/** The same places with nobody at that rack: each goes to the end of the other rack that has the fewest then. */
export function clearRack(places: readonly Place[], rackId: string, others: readonly string[]): Place[] {
  return onRack(places, rackId).reduce<Place[]>(
    (now, { lifterId }) => {
      const crowd = (id: string) => onRack(now, id).length;
      const to = [...others].sort((a, b) => crowd(a) - crowd(b))[0];
      return to === undefined ? now : movePlace(now, lifterId, to, Number.MAX_SAFE_INTEGER);
    },
    [...places],
  );
}
