import { type BarParabola, misfitOf } from './misfit.ts';

/**
 * A squared spread `A x^2 + 2 B x + C` of shares over their squared mean `(p x + q)^2`, in the bar's mass x. In
 * `u = 1 / (p x + q)` it is a parabola, so that its least value is a closed form and it rises to both sides:
 *
 *   A / p^2 + 2 u (B / p - A q / p^2) + u^2 (C - 2 B q / p + A q^2 / p^2)
 */
export interface Evenness {
  parabola: BarParabola;
  perKg: number;
  gearShare: number;
}

/** `perKg` is p, `gearShare` q; `extra` is added to the squared ratio whatever the bar. */
export function evenness(spread: BarParabola, perKg: number, gearShare: number, extra: number): Evenness {
  const { curvature, tilt, level } = spread;
  const slope = curvature / perKg;
  return {
    parabola: {
      curvature: level - (2 * tilt - slope * gearShare) * (gearShare / perKg),
      tilt: (tilt - slope * gearShare) / perKg,
      level: slope / perKg + extra,
    },
    perKg,
    gearShare,
  };
}

/** The least root of it between two bar masses. */
export function leastUnevenness(
  { parabola, perKg, gearShare }: Evenness,
  fromKg: number,
  toKg: number,
): number {
  // A bar that bands from above carry whole has no share to be even in.
  const inverse = (kg: number) => 1 / Math.max(perKg * kg + gearShare, LEAST_SHARE);
  const best = parabola.curvature > 0 ? -parabola.tilt / parabola.curvature : Number.POSITIVE_INFINITY;
  return misfitOf(parabola, Math.min(Math.max(best, inverse(toKg)), inverse(fromKg)));
}

const LEAST_SHARE = 1e-6;
