import { normalCdf, normalDensity } from '../numeric/normal.ts';
import { SET_SD_LN, SLIP_SD_LN, SLIP_SHARE } from './noise.ts';
import { STOP_ROOTS } from './response.ts';

/**
 * What a missed set lacked, tabulated by what the day's strength lacked (nought or more), or had to spare (below nought): a set with
 * strength to spare is missed by its own luck or by a slip of the pen, one that lacked strength as a rule by just that.
 */
const STEP_LN = 0.001;
/** From what even a slip hardly spoils up to what stops at once. */
const MOST_SPARE = Math.ceil((5 * SLIP_SD_LN) / STEP_LN);
const MOST_LACKING = Math.ceil(STOP_ROOTS[STOP_ROOTS.length - 1]! ** 2 / STEP_LN);
/** So many standard deviations below nought a normal's tail above it hardly differs from farther down. */
const FAR = 5;

/** Square roots of what was lacked in the mean, by luck and by a slip, and the chance that a set with strength to spare was a slip. */
export const lackedRoots = tabulated((lackingLn) => Math.sqrt(meanAbove(lackingLn, SET_SD_LN)));
export const slipRoots = tabulated((lackingLn) => Math.sqrt(meanAbove(lackingLn, SLIP_SD_LN)));
export const slipChances = tabulated((lackingLn) => {
  if (lackingLn >= 0) return 0;
  const slip = SLIP_SHARE * normalCdf(lackingLn / SLIP_SD_LN);
  return slip / (slip + (1 - SLIP_SHARE) * normalCdf(lackingLn / SET_SD_LN));
});

/** Where in these tables `lackingLn` stands; beyond their ends, the end. */
export function rowOfLacking(lackingLn: number): number {
  return Math.min(Math.max(Math.round(lackingLn / STEP_LN), -MOST_SPARE), MOST_LACKING) + MOST_SPARE;
}

function tabulated(value: (lackingLn: number) => number): Float64Array {
  return Float64Array.from({ length: MOST_SPARE + MOST_LACKING + 1 }, (_, i) =>
    value((i - MOST_SPARE) * STEP_LN),
  );
}

/** Mean of what of a normal lies above nought. */
function meanAbove(mean: number, sd: number): number {
  const z = Math.max(mean / sd, -FAR);
  return sd * (z + normalDensity(z) / normalCdf(z));
}
