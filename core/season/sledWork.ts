/**
 * Mechanical work in joules of dragging a sled at a steady pace over level floor: friction times weight times way. What getting it under way
 * takes is left out; it is given back by the floor when it stops.
 */
export function sledWorkJ(
  sled: { massKg: number; friction: number; distanceM: number; trips: number },
  gravity: number,
): number {
  return sled.friction * sled.massKg * gravity * sled.distanceM * sled.trips;
}
