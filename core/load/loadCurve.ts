import { integrate } from '../numeric/gaussLegendre.ts';
import type { Newton } from '../numeric/quantity.ts';
import { type CompiledLoad, compileLoad, type LoadParts } from './compileLoad.ts';
import type { Load } from './Load.ts';

/** The load at one height: `s` runs from 0 at the bottom of this load to 1 at its lockout. */
export interface LoadPoint extends LoadParts {
  s: number;
  zM: number;
  /** Standard deviation of `totalN`, carried from the fits of the bands. */
  sdN: Newton;
}

export interface LoadCurve {
  points: LoadPoint[];
  bottomN: Newton;
  midN: Newton;
  lockoutN: Newton;
  /** Work over range. */
  meanN: Newton;
  workJ: number;
  /** Height below which no band pulls, where some do higher up; null where they pull from the bottom or never. */
  slackBelowM: number | null;
}

/**
 * The load on the way up at `points` evenly spaced heights, with its summary.
 *
 *   meanN = (integral of Load dz) / (lockout - bottom)
 *
 * Start reading the core here: everything below feeds this curve, everything above uses it.
 */
export function loadCurve(load: Load, points: number): LoadCurve {
  return curveOf(compileLoad(load), points);
}

/** The same for a load that is compiled already. */
export function curveOf(compiled: CompiledLoad, points: number): LoadCurve {
  const { bottomM, lockoutM } = compiled.load;
  const rangeM = lockoutM - bottomM;
  const workJ = integrate((z) => compiled.at(z).totalN, bottomM, lockoutM, compiled.breaksM);
  return {
    points: Array.from({ length: points }, (_, i) => {
      const s = i / (points - 1);
      const zM = bottomM + s * rangeM;
      return { s, zM, ...compiled.at(zM), sdN: compiled.bandSdN(zM) };
    }),
    bottomN: compiled.at(bottomM).totalN,
    midN: compiled.at(bottomM + rangeM / 2).totalN,
    lockoutN: compiled.at(lockoutM).totalN,
    meanN: workJ / rangeM,
    workJ,
    slackBelowM: slackBelow(compiled),
  };
}

/** The first kink up to which no band pulls and above which one does. */
function slackBelow(compiled: CompiledLoad): number | null {
  const { bottomM, lockoutM } = compiled.load;
  const ends = [bottomM, ...compiled.breaksM, lockoutM];
  if (compiled.bandN(bottomM) !== 0) return null;
  for (let i = 1; i < ends.length; i++) {
    const middleM = (ends[i - 1]! + ends[i]!) / 2;
    if (compiled.bandN(middleM) !== 0) return i === 1 ? null : ends[i - 1]!;
  }
  return null;
}
