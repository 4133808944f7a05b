import type { LoadPoint } from '#core/load/loadCurve.ts';

/** How well it is known where the lift begins and ends: standard deviations (m). */
export interface HeightSpread {
  bottomSdM: number;
  lockoutSdM: number;
}

/** Heights that stand fast, as in a calculation by itself. */
export const exactHeights: HeightSpread = { bottomSdM: 0, lockoutSdM: 0 };

/**
 * The load at a point with what its height adds to its spread, in squares to that of the bands:
 *
 *   sd(z) = (Load(z + sd_z) - Load(z - sd_z)) / 2,   sd_z linear from bottom to lockout
 *
 * A central difference as wide as the spread itself, so that a band going taut within it is felt.
 */
export function withHeightSpread(
  point: LoadPoint,
  heights: HeightSpread,
  totalN: (zM: number) => number,
): LoadPoint {
  return { ...point, sdN: Math.hypot(point.sdN, heightEffectN(heights, point.s, point.zM, totalN)) };
}

/** What one standard deviation of the height at `s` changes of a load (N), with its sign. */
export function heightEffectN(
  { bottomSdM, lockoutSdM }: HeightSpread,
  s: number,
  zM: number,
  totalN: (zM: number) => number,
): number {
  const sdM = (1 - s) * bottomSdM + s * lockoutSdM;
  return (totalN(zM + sdM) - totalN(zM - sdM)) / 2;
}
