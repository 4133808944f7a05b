/** How the way up begins: see the records of the club. Box, pins, boards, blocks and deficit carry a height (m). */
export type Start =
  | { way: 'free' | 'paused' }
  | { way: 'box' | 'pins' | 'boards' | 'blocks' | 'deficit'; heightM: number };

/** Bar heights above the floor (m). */
export interface HeightRange {
  bottomM: number;
  lockoutM: number;
}

/**
 * Where the bar starts and ends from a given start, from the lifter's full range, and where that full range lies
 * above the floor. Box: the bar is as much above (below) the free bottom as the box is above (below) the lifter's
 * parallel box. Boards raise the bottom by their thickness, blocks by their height; pins hold the bar at their
 * height; on a deficit the lifter stands higher by `heightM` while the bar stays. Geometry; a height measured from
 * that very start should be preferred to it.
 */
export function startHeights(
  free: HeightRange,
  start: Start,
  parallelBoxM: number,
): HeightRange & { range: { fromM: number; toM: number } } {
  const range = { fromM: free.bottomM, toM: free.lockoutM };
  const from = (bottomM: number) => ({ bottomM, lockoutM: free.lockoutM, range });
  switch (start.way) {
    case 'free':
    case 'paused':
      return from(free.bottomM);
    case 'box':
      return from(free.bottomM + start.heightM - parallelBoxM);
    case 'pins':
      return from(start.heightM);
    case 'boards':
    case 'blocks':
      return from(free.bottomM + start.heightM);
    case 'deficit':
      return {
        bottomM: free.bottomM,
        lockoutM: free.lockoutM + start.heightM,
        range: { fromM: free.bottomM + start.heightM, toM: free.lockoutM + start.heightM },
      };
  }
}
