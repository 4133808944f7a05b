/**
 * Top of a smooth ln density by the parabola through three points a `step` apart, the middle one, `from`, known: where it lies, but no
 * farther than two steps, the parabola there, and the standard deviation that its bend stands for. Where it does not bend down: one step
 * up, and a step for the standard deviation.
 */
export function parabolaPeak(
  lnDensity: (x: number) => number,
  from: number,
  middle: number,
  step: number,
): { at: number; value: number; sd: number } {
  const low = lnDensity(from - step);
  const high = lnDensity(from + step);
  const bend = (low + high - 2 * middle) / (step * step);
  const slope = (high - low) / (2 * step);
  const by = bend < 0 ? Math.min(Math.max(-slope / bend, -2 * step), 2 * step) : Math.sign(slope) * step;
  const value = middle + slope * by + 0.5 * bend * by * by;
  return { at: from + by, value, sd: bend < 0 ? 1 / Math.sqrt(-bend) : step };
}
