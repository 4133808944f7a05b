import type { NormalShape } from './importanceSample.ts';

/** Differences are taken over so many standard deviations: far enough to be about the whole, not about its top alone. */
const REACH = 1;
/** A step goes no farther along an axis (standard deviations), and no axis gets longer or shorter than by these. */
const FARTHEST = 2;
const SHORTEST = 0.4;
const LONGEST = 1.4;

/**
 * A normal distribution moved towards where `lnDensity` has its peak, its axes fitted to how that bends there: one step
 * of Newton along each axis of the root, by central differences. Asks `lnDensity` twice an axis and once more.
 */
export function nearerPeak(shape: NormalShape, lnDensity: (x: Float64Array) => number): NormalShape {
  const { mean, root } = shape;
  const n = mean.length;
  const alongAxis = (k: number, by: number) => mean.map((value, i) => value + by * root[i * n + k]!);
  const middle = n > 0 ? lnDensity(mean) : 0;
  const steps = new Float64Array(n);
  const lengths = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    const up = lnDensity(alongAxis(k, REACH));
    const down = lnDensity(alongAxis(k, -REACH));
    const bend = Math.min(Math.max((2 * middle - up - down) / REACH ** 2, LONGEST ** -2), SHORTEST ** -2);
    steps[k] = Math.min(Math.max((up - down) / (2 * REACH) / bend, -FARTHEST), FARTHEST);
    lengths[k] = 1 / Math.sqrt(bend);
  }
  return {
    mean: mean.map((value, i) => steps.reduce((sum, step, k) => sum + step * root[i * n + k]!, value)),
    root: root.map((value, at) => value * lengths[at % n]!),
  };
}
