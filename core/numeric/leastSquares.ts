import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { CholeskyDecomposition, Matrix } from 'ml-matrix';

/**
 * Bounded weighted least squares: the parameters p between `lower` and `upper` that make
 * `chiSquare = sum(((values - model(p)) / sds)^2)` least.
 *
 * The library takes steps without ever saying whether it arrived, so it runs here in short bursts on a whitened and
 * scaled problem (without the parameters that press against a bound), and each burst is judged by what a Gauss-Newton step could still gain: below `SETTLED` of chiSquare
 * the fit has settled (relative offset criterion, Bates & Watts 1981, Technometrics 23:179-183). A fit that does not
 * settle from any start is a result with `ok: false`, never NaN.
 */
export interface LeastSquaresProblem {
  values: readonly number[];
  /** Standard deviation of each value. */
  sds: readonly number[];
  model: (parameters: readonly number[]) => readonly number[];
  /** One row a value, one column a parameter. */
  jacobian: (parameters: readonly number[]) => readonly (readonly number[])[];
  lower: readonly number[];
  upper: readonly number[];
  starts: readonly (readonly number[])[];
}

export type LeastSquaresFit =
  | {
      ok: true;
      parameters: readonly number[];
      chiSquare: number;
      /** Inverse of JᵀJ with unit residual variance; zero rows for parameters that ended on a bound. */
      covariance: readonly (readonly number[])[];
    }
  | { ok: false; reason: string };

const BURST = 5;
const BURSTS = 20;
/** Gain still possible, as a share of chiSquare. */
const SETTLED = 1e-8;
/** chiSquare below this (a millionth of a standard deviation) is an exact fit. */
const EXACT = 1e-12;
const LEAST_DAMPING = 1e-7;

export function leastSquares(problem: LeastSquaresProblem): LeastSquaresFit {
  let best: LeastSquaresFit = { ok: false, reason: 'no start was given' };
  for (const start of problem.starts) {
    const fit = fitFrom(problem, start);
    if (!best.ok || (fit.ok && fit.chiSquare < best.chiSquare)) best = fit;
  }
  return best;
}

function fitFrom(problem: LeastSquaresProblem, start: readonly number[]): LeastSquaresFit {
  const first = inspect(problem, clamped(problem, start));
  if ('reason' in first) return { ok: false, ...first };
  let place = first;
  let damping = 1e-3;
  for (let burst = 0; burst < BURSTS; burst++) {
    if (place.gain <= SETTLED * place.chiSquare + EXACT) {
      const { parameters, chiSquare, covariance } = place;
      return { ok: true, parameters, chiSquare, covariance };
    }
    const before = place;
    for (const pinned of pinnings(problem, before)) {
      const next = inspect(problem, runBurst(problem, before, pinned, damping));
      if (!('reason' in next) && next.chiSquare < place.chiSquare) place = next;
    }
    damping = place === before ? damping * 10 : Math.max(damping / 10, LEAST_DAMPING);
  }
  return { ok: false, reason: 'the fit did not settle' };
}

/** The misfit at a point, how a Gauss-Newton step over the free parameters would go on, and the covariance there. */
interface Place {
  parameters: readonly number[];
  chiSquare: number;
  /** Not pressed against a bound by the gradient. */
  free: readonly number[];
  /** One over the length of each parameter's column of the Jacobian. */
  scales: readonly number[];
  covariance: readonly (readonly number[])[];
  step: readonly number[];
  /** What that step would take off chiSquare, to first order. */
  gain: number;
}

function inspect(problem: LeastSquaresProblem, parameters: readonly number[]): Place | { reason: string } {
  const { values, sds, lower, upper } = problem;
  const residuals = problem.model(parameters).map((m, i) => (values[i]! - m) / sds[i]!);
  const rows = problem.jacobian(parameters).map((row, i) => row.map((d) => d / sds[i]!));
  const chiSquare = residuals.reduce((sum, r) => sum + r * r, 0);
  const gradient = parameters.map((_, k) => rows.reduce((sum, row, i) => sum + row[k]! * residuals[i]!, 0));
  const norms = parameters.map((_, k) => Math.sqrt(rows.reduce((sum, row) => sum + row[k]! ** 2, 0)));
  if (![chiSquare, ...gradient, ...norms].every(Number.isFinite)) {
    return { reason: 'the model is not finite there' };
  }
  const scales = norms.map((norm) => (norm > 0 ? 1 / norm : 1));
  const free = parameters.flatMap((p, k) =>
    (p <= lower[k]! && gradient[k]! <= 0) || (p >= upper[k]! && gradient[k]! >= 0) ? [] : [k],
  );
  const covariance = parameters.map(() => parameters.map(() => 0));
  if (free.length > 0) {
    const scaled = new Matrix(rows.map((row) => free.map((k) => row[k]! * scales[k]!)));
    const normal = new CholeskyDecomposition(scaled.transpose().mmul(scaled));
    if (!normal.isPositiveDefinite()) return { reason: 'the values do not fix every parameter' };
    const inverse = normal.solve(Matrix.eye(free.length));
    free.forEach((k, a) => {
      free.forEach((l, b) => {
        covariance[k]![l] = inverse.get(a, b) * scales[k]! * scales[l]!;
      });
    });
  }
  const step = covariance.map((row) => row.reduce((sum, c, l) => sum + c * gradient[l]!, 0));
  const gain = step.reduce((sum, d, k) => sum + d * gradient[k]!, 0);
  return { parameters, chiSquare, free, scales, covariance, step, gain };
}

/** Which parameters to hold at a bound during a burst: none, and those that the step would carry over one. */
function pinnings({ lower, upper }: LeastSquaresProblem, { parameters, free, step }: Place): number[][] {
  const crossing = free.filter((k) => {
    const to = parameters[k]! + step[k]!;
    return to < lower[k]! || to > upper[k]!;
  });
  return crossing.length > 0 ? [[], crossing] : [[]];
}

/** A few steps of the library in units of `scales`, with `pinned` at their bounds; returns the best point that it saw. */
function runBurst(
  problem: LeastSquaresProblem,
  { parameters, free, scales, step }: Place,
  pinned: readonly number[],
  damping: number,
): number[] {
  const { values, sds, model, jacobian, lower, upper } = problem;
  const from = parameters.map((p, k) => (pinned.includes(k) ? p + step[k]! : p));
  const moving = free.filter((k) => !pinned.includes(k));
  if (moving.length === 0) return clamped(problem, from);
  const scaled = (full: readonly number[]): number[] => moving.map((k) => full[k]! / scales[k]!);
  const unscaled = (u: readonly number[]): number[] => {
    const full = [...from];
    moving.forEach((k, i) => {
      full[k] = u[i]! * scales[k]!;
    });
    return clamped(problem, full);
  };
  // The library wants two values at least, so a single one is told twice.
  const told = values.length === 1 ? [0, 0] : values.map((_, i) => i);
  const steps = () =>
    levenbergMarquardt(
      { x: told, y: told.map((i) => values[i]! / sds[i]!) },
      (u) => {
        const predicted = model(unscaled(u));
        return (i) => predicted[i]! / sds[i]!;
      },
      {
        initialValues: scaled(parameters),
        minValues: scaled(lower),
        maxValues: scaled(upper),
        jacobianFunction: (u) => {
          const rows = jacobian(unscaled(u));
          return (i) => moving.map((k) => (rows[i]![k]! * scales[k]!) / sds[i]!);
        },
        damping,
        maxIterations: BURST,
        errorTolerance: EXACT * 1e-6,
      },
    );
  try {
    return unscaled(steps().parameterValues);
  } catch {
    // The library throws where a step led to a singular matrix: no gain, so the next burst is damped more.
    return clamped(problem, from);
  }
}

function clamped({ lower, upper }: LeastSquaresProblem, parameters: readonly number[]): number[] {
  return parameters.map((p, k) => Math.min(Math.max(p, lower[k]!), upper[k]!));
}
