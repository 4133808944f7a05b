/** A way between two turns of the height; `from` and `to` are places in the list of heights. */
export interface Leg {
  from: number;
  to: number;
  up: boolean;
}

/**
 * The ways up and down between turning points, those smaller than `leastM` passed over: a turn counts once the height
 * has gone back from it by that much.
 */
export function turningLegs(zM: Float64Array, leastM: number): Leg[] {
  const turns: number[] = [];
  let lowest = 0;
  let highest = 0;
  let up: boolean | null = null;
  for (let i = 1; i < zM.length; i++) {
    if (zM[i]! > zM[highest]!) highest = i;
    if (zM[i]! < zM[lowest]!) lowest = i;
    if (up !== true && zM[i]! - zM[lowest]! >= leastM) {
      turns.push(lowest);
      up = true;
      highest = i;
    } else if (up !== false && zM[highest]! - zM[i]! >= leastM) {
      turns.push(highest);
      up = false;
      lowest = i;
    }
    if (up === true) lowest = highest;
    else if (up === false) highest = lowest;
  }
  if (up !== null) turns.push(up ? highest : lowest);
  return turns.slice(1).map((to, i) => ({ from: turns[i]!, to, up: zM[to]! > zM[turns[i]!]! }));
}
