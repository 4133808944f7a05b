/** Where a list of `count` numbers is to be found, all of them to be written over: what stands there before is anything. */
export type Room = (count: number) => Float64Array;

/** A list of its own each time. */
export const ownRoom: Room = (count) => new Float64Array(count);

/**
 * Few lists that are written over in turn, the `places` last ones staying as they are: thousands of short lists one after the
 * other would be most of the work.
 */
export function turningRoom(places: number): Room {
  // The beginning of each list by its length: to make one anew costs more than to fill it.
  const beginnings = Array.from({ length: places }, (): Float64Array[] => []);
  const lists = Array.from({ length: places }, () => new Float64Array(ROOM_POINTS));
  let turn = 0;
  return (count) => {
    turn = (turn + 1) % places;
    if (lists[turn]!.length < count) {
      lists[turn] = new Float64Array(2 * count);
      beginnings[turn] = [];
    }
    const known = beginnings[turn]!;
    known[count] ??= lists[turn]!.subarray(0, count);
    return known[count];
  };
}
const ROOM_POINTS = 1024;

/** Lists of their own, cut from longer ones: to be given memory one by one would be most of the work. */
export function cutRoom(): Room {
  let whole = new Float64Array(0);
  let used = 0;
  return (count) => {
    if (used + count > whole.length) {
      whole = new Float64Array(Math.max(4 * ROOM_POINTS, count));
      used = 0;
    }
    used += count;
    return whole.subarray(used - count, used);
  };
}
