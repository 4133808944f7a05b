import { normalQuantile } from '../numeric/normal.ts';
import { DAY_SD } from './parameters.ts';

/**
 * How far below its middle (ln, never above 0) strength is gone by, so that the lifter has at least that much with this
 * chance (0.5 to below 1). `sdLn` is the standard deviation of what is believed of ln strength. What the form of a day hides
 * anyway does not count: a lifter known that well is gone by in the middle.
 */
export function belowMiddleLn(sdLn: number, chance: number): number {
  return Math.min(0, -normalQuantile(chance) * Math.sqrt(Math.max(0, sdLn ** 2 - DAY_SD ** 2)));
}

/** What the best of ten days brings beyond an average one (ln): a best within it is no reason for doubt. */
export const GOOD_DAY_LN = DAY_SD * normalQuantile(0.9);
