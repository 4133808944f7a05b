import { describe, expect, it } from 'vitest';
import { nearerPeak } from './nearerPeak.ts';

/** A normal with mean (1, -2) and covariance [[4, 2], [2, 5]]: its root is [[2, 0], [1, 2]]. */
function lnNormal(x: Float64Array): number {
  const z1 = (x[0]! - 1) / 2;
  const z2 = (x[1]! + 2 - z1) / 2;
  return 7 - 0.5 * (z1 * z1 + z2 * z2);
}

describe('nearerPeak', () => {
  it('finds mean and root of a normal density at once where the axes are its own', () => {
    const first = { mean: Float64Array.of(0, -1.5), root: Float64Array.of(2.4, 0, 1.2, 2) };
    const { mean, root } = nearerPeak(first, lnNormal);
    [1, -2].forEach((value, i) => expect(mean[i]).toBeCloseTo(value, 9));
    [2, 0, 1, 2].forEach((value, i) => expect(root[i]).toBeCloseTo(value, 9));
  });

  it('goes no farther than two lengths of an axis', () => {
    const first = { mean: Float64Array.of(101, 48), root: Float64Array.of(2, 0, 1, 2) };
    const { mean } = nearerPeak(first, lnNormal);
    [97, 46].forEach((value, i) => expect(mean[i]).toBeCloseTo(value, 9));
  });
});
