/** Where a search begins, its first step, how near it ends, and the bounds that it keeps within. */
export interface LimitSearch {
  guess: number;
  step: number;
  tolerance: number;
  lowest: number;
  highest: number;
}

/**
 * The limit between the `x` for which `isBelow` holds and those for which it does not, by doubling steps out from
 * `guess` until both sides are seen and halving down to `tolerance`. Only the answer yes or no is used, so a jump is
 * found as safely as a crossing. `isBelow` must be true below the limit and false above; null where no limit lies
 * between `lowest` and `highest`. Throws RangeError where guess, step or tolerance is no number: no search from there ends.
 */
export function findLimit(
  isBelow: (x: number) => boolean,
  search: LimitSearch,
): { below: number; above: number } | null {
  const { lowest, highest, tolerance } = search;
  if ([search.guess, search.step, tolerance].some(Number.isNaN))
    throw new RangeError('these forces are beyond what can be calculated with');
  const inside = (x: number) => Math.min(Math.max(x, lowest), highest);
  let step = search.step;
  let below = inside(search.guess);
  let above = below;
  if (isBelow(below)) {
    do {
      if (above === highest) return null;
      below = above;
      above = inside(above + step);
      step *= 2;
    } while (isBelow(above));
  } else {
    do {
      if (below === lowest) return null;
      above = below;
      below = inside(below - step);
      step *= 2;
    } while (!isBelow(below));
  }
  while (above - below > tolerance) {
    const middle = (below + above) / 2;
    if (middle <= below || middle >= above) break;
    if (isBelow(middle)) below = middle;
    else above = middle;
  }
  return { below, above };
}
