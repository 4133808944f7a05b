import type { Start } from '#contract/records/lift.ts';

/** Heights of one start are read to a millimetre. */
const READ_TO_M = 0.001;

/** Whether two starts are the same way from the same height, to less than `withinM`. */
export function isSameStart(a: Start, b: Start, withinM = READ_TO_M): boolean {
  return a.way === b.way && Math.abs((a.heightM ?? 0) - (b.heightM ?? 0)) < withinM;
}
