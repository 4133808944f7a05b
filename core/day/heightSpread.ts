import type { LoadPoint } from '#core/load/loadCurve.ts';

/** How well it is known where the lift begins and ends: standard deviations (m), 0 where measured. */
export interface HeightSpread {
  bottomSdM: number;
  lockoutSdM: number;
}

/**
 * The load at a point with what its height adds to its spread, in squares to that of the bands:
 *
 *   sd(z) = (Load(z + sd_z) - Load(z - sd_z)) / 2,   sd_z linear from bottom to lockout
 *
 * A central difference as wide as the spread itself, so that a band going taut within it is felt.
 */
export function withHeightSpread(
  point: LoadPoint,
  { bottomSdM, lockoutSdM }: HeightSpread,
  totalN: (zM: number) => number,
): LoadPoint {
  const sdM = (1 - point.s) * bottomSdM + point.s * lockoutSdM;
  const fromHeightN = (totalN(point.zM + sdM) - totalN(point.zM - sdM)) / 2;
  return { ...point, sdN: Math.hypot(point.sdN, fromHeightN) };
}
