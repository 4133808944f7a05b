import { studentTQuantile } from '../numeric/studentT.ts';
import type { GroupEffect, MixedFit } from './fitMixed.ts';

/** An estimate with the ranges that hold the truth with 80 and 95 %. */
export interface Effect {
  value: number;
  sd: number;
  degreesOfFreedom: number;
  low80: number;
  high80: number;
  low95: number;
  high95: number;
}

/**
 * The sum of fixed effects with the weights `of`, with a small-sample t: degrees of freedom by Satterthwaite (1946,
 * Biometrics Bull 2:110; for mixed models Giesbrecht & Burns 1985, Biometrics 41:477), rounded down, 1 to n - p.
 * With a group, its own effects are added with the weights `ofGroup`.
 */
export function contrast(
  fit: MixedFit,
  of: readonly number[],
  own?: { group: GroupEffect; ofGroup: readonly number[] },
): Effect {
  const weights = own ? [...of, ...own.ofGroup] : of;
  const estimates = own ? [...fit.fixed, ...own.group.effect] : fit.fixed;
  const value = weights.reduce((sum, w, k) => sum + w * estimates[k]!, 0);
  const variance = quadratic(own ? own.group.jointCovariance : fit.covariance, weights);
  return effectOf(value, Math.sqrt(Math.max(0, variance)), satterthwaite(fit, of));
}

/** An effect from its estimate, standard error and degrees of freedom. */
export function effectOf(value: number, sd: number, degreesOfFreedom: number): Effect {
  const half80 = studentTQuantile(0.9, degreesOfFreedom) * sd;
  const half95 = studentTQuantile(0.975, degreesOfFreedom) * sd;
  return {
    value,
    sd,
    degreesOfFreedom,
    low80: value - half80,
    high80: value + half80,
    low95: value - half95,
    high95: value + half95,
  };
}

/** `2 v^2 / Var(v)`, v the variance of the sum; 1 where nothing scatters, of which none could be told. */
export function satterthwaite(fit: MixedFit, of: readonly number[]): number {
  const most = fit.observations - fit.fixed.length;
  const variance = quadratic(fit.covariance, of);
  const slopes = fit.shifts.map((shift) => quadratic(shift, of));
  const spread = quadratic(fit.parameterCovariance, slopes);
  const degrees = Math.floor((2 * variance ** 2) / spread + WHOLE);
  return Number.isNaN(degrees) ? 1 : Math.max(1, Math.min(most, degrees));
}

/** What differences in place of derivatives leave of a whole number is whole. */
const WHOLE = 1e-3;

function quadratic(matrix: readonly (readonly number[])[], w: readonly number[]): number {
  return w.reduce((sum, a, i) => sum + w.reduce((inner, b, j) => inner + a * b * matrix[i]![j]!, 0), 0);
}
