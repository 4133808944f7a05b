import type { Anchor, Hookup } from './Rig.ts';

/** The bar's fore-aft path: linear between its points, constant outside, 0 where there are none. */
export type BarPath = readonly { zM: number; xM: number }[];

/** Fore-aft position of the bar (m) at height `zM`; `path` sorted by height. */
export function barX(path: BarPath, zM: number): number {
  const first = path[0];
  if (first === undefined) return 0;
  if (zM <= first.zM) return first.xM;
  for (let i = 1; i < path.length; i++) {
    const low = path[i - 1]!;
    const high = path[i]!;
    if (zM <= high.zM) return low.xM + ((high.xM - low.xM) * (zM - low.zM)) / (high.zM - low.zM);
  }
  return path[path.length - 1]!.xM;
}

/** Distance from anchor to the sleeve's band position (m): `l(z) = |bar - anchor|`. */
export function pathLengthM(anchor: Anchor, xM: number, zM: number): number {
  return Math.sqrt((xM - anchor.xM) ** 2 + anchor.yM ** 2 + (zM - anchor.zM) ** 2);
}

/**
 * How many metres of whole-loop length stand for one metre of path, by hookup: the stretch ratio is
 * `lambda = loopPerPath * l / L0`. Doubled: both folds of half the loop stretch together, `lambda = 2 l / L0`.
 * Choked: only `L0 - spent` of the loop is free to stretch, `lambda = l / (L0 - spent)`.
 */
export function loopPerPath(hookup: Hookup, restLengthM: number): number {
  if (hookup.way === 'single') return 1;
  if (hookup.way === 'doubled') return 2;
  if (hookup.spentM >= restLengthM)
    throw new RangeError(`spentM ${hookup.spentM} must be less than the rest length ${restLengthM}`);
  return restLengthM / (restLengthM - hookup.spentM);
}

/** How many times the tension of the whole loop at that stretch acts on the sleeve: twice where it is doubled. */
export function pullsPerLoop(hookup: Hookup): number {
  return hookup.way === 'doubled' ? 2 : 1;
}

/**
 * Heights (m) between `fromM` and `toM` at which the path is `lengthM` long, rising: the bar heights at which a
 * band goes slack or taut. The path is piecewise linear, so each piece is a quadratic in z.
 */
export function heightsAtPathLength(
  anchor: Anchor,
  path: BarPath,
  lengthM: number,
  fromM: number,
  toM: number,
): number[] {
  const ends = [fromM, ...path.map((p) => p.zM).filter((z) => z > fromM && z < toM), toM];
  const found: number[] = [];
  for (let i = 1; i < ends.length; i++) {
    const lowM = ends[i - 1]!;
    const highM = ends[i]!;
    const slope = (barX(path, highM) - barX(path, lowM)) / (highM - lowM || 1);
    const x0 = barX(path, lowM) - slope * lowM - anchor.xM;
    const a = 1 + slope ** 2;
    const b = 2 * (slope * x0 - anchor.zM);
    const c = x0 ** 2 + anchor.yM ** 2 + anchor.zM ** 2 - lengthM ** 2;
    const discriminant = b * b - 4 * a * c;
    if (discriminant <= 0) continue;
    for (const sign of [-1, 1]) {
      const z = (-b + sign * Math.sqrt(discriminant)) / (2 * a);
      if (z > lowM && z < highM) found.push(z);
    }
  }
  return found;
}
