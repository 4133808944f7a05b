import type { Start } from '#contract/records/lift.ts';

/** The same way and height, to less than a tape reads. */
export function isSameStart(a: Start, b: Start): boolean {
  return a.way === b.way && Math.abs((a.heightM ?? 0) - (b.heightM ?? 0)) < 1e-6;
}
