import type { HeightRange, Start } from './startHeights.ts';

/**
 * The full range where only another start was measured, the inverse of `startHeights`: its lockout is the lifter's own, and
 * its bottom tells where the free one must lie, so that no measured start falls outside the range that strength counts
 * from. Pins tell nothing of the free bottom but that it lies no higher. Heights in m above the floor.
 */
export function fullRange(
  start: Start,
  { bottomM, lockoutM }: HeightRange,
  estimated: HeightRange,
  parallelBoxM: number,
): HeightRange {
  switch (start.way) {
    case 'box':
      return { bottomM: bottomM - (start.heightM - parallelBoxM), lockoutM };
    case 'boards':
    case 'blocks':
      return { bottomM: bottomM - start.heightM, lockoutM };
    case 'deficit':
      return { bottomM, lockoutM: lockoutM - start.heightM };
    case 'pins':
      return { bottomM: Math.min(bottomM, estimated.bottomM), lockoutM };
    case 'free':
    case 'paused':
      return { bottomM, lockoutM };
  }
}

/** The box that stops a lifter at the free bottom (m), from where the bar was on a box of another height. */
export function parallelBox(boxM: number, bottomOnBoxM: number, freeBottomM: number): number {
  return boxM - (bottomOnBoxM - freeBottomM);
}
