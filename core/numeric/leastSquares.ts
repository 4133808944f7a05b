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
  let parameters = start.map((p, k) => Math.min(Math.max(p, problem.lower[k]!), problem.upper[k]!));
  let look = inspect(problem, parameters);
  let damping = 1e-3;
  for (let burst = 0; burst < BURSTS; burst++) {
    if (!look.ok) return look;
    if (look.gain <= SETTLED * look.chiSquare + EXACT) {
      return { ok: true, parameters, chiSquare: look.chiSquare, covariance: look.covariance };
    }
    const next = runBurst(problem, parameters, look, damping);
    const nextLook = inspect(problem, next);
    const better = nextLook.ok && nextLook.chiSquare < look.chiSquare;
    damping = better ? Math.max(damping / 10, LEAST_DAMPING) : damping * 10;
    if (better) {
      parameters = next;
      look = nextLook;
    }
  }
  return { ok: false, reason: 'the fit did not settle' };
}

/** A few steps of the library over the free parameters, in units of `scales`; returns the best point that it saw. */
function runBurst(
  { values, sds, model, jacobian, lower, upper }: LeastSquaresProblem,
  parameters: readonly number[],
  { free, scales }: { free: readonly number[]; scales: readonly number[] },
  damping: number,
): number[] {
  const scaled = (full: readonly number[]): number[] => free.map((k) => full[k]! / scales[k]!);
  const unscaled = (u: readonly number[]): number[] => {
    const full = [...parameters];
    free.forEach((k, i) => {
      full[k] = Math.min(Math.max(u[i]! * scales[k]!, lower[k]!), upper[k]!);
    });
    return full;
  };
  const { parameterValues } = levenbergMarquardt(
    { x: values.map((_, i) => i), y: values.map((v, i) => v / sds[i]!) },
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
        return (i) => free.map((k) => (rows[i]![k]! * scales[k]!) / sds[i]!);
      },
      damping,
      maxIterations: BURST,
      errorTolerance: EXACT * 1e-6,
    },
  );
  return unscaled(parameterValues);
}

type Look =
  | { ok: true; chiSquare: number; gain: number; free: number[]; scales: number[]; covariance: number[][] }
  | { ok: false; reason: string };

/** Misfit, what a Gauss-Newton step over the free parameters could still gain, and the covariance there. */
function inspect(problem: LeastSquaresProblem, parameters: readonly number[]): Look {
  const { values, sds, lower, upper } = problem;
  const residuals = problem.model(parameters).map((m, i) => (values[i]! - m) / sds[i]!);
  const rows = problem.jacobian(parameters).map((row, i) => row.map((d) => d / sds[i]!));
  const chiSquare = residuals.reduce((sum, r) => sum + r * r, 0);
  const gradient = parameters.map((_, k) => rows.reduce((sum, row, i) => sum + row[k]! * residuals[i]!, 0));
  const norms = parameters.map((_, k) => Math.sqrt(rows.reduce((sum, row) => sum + row[k]! ** 2, 0)));
  if (![chiSquare, ...gradient, ...norms].every(Number.isFinite)) {
    return { ok: false, reason: 'the model is not finite there' };
  }
  const scales = norms.map((norm) => (norm > 0 ? 1 / norm : 1));
  const free = parameters.flatMap((p, k) =>
    (p <= lower[k]! && gradient[k]! <= 0) || (p >= upper[k]! && gradient[k]! >= 0) ? [] : [k],
  );
  const covariance = parameters.map(() => parameters.map(() => 0));
  if (free.length === 0) return { ok: true, chiSquare, gain: 0, free, scales, covariance };

  const scaled = new Matrix(rows.map((row) => free.map((k) => row[k]! * scales[k]!)));
  const normal = new CholeskyDecomposition(scaled.transpose().mmul(scaled));
  if (!normal.isPositiveDefinite()) return { ok: false, reason: 'the values do not fix every parameter' };
  const inverse = normal.solve(Matrix.eye(free.length));
  let gain = 0;
  free.forEach((k, a) => {
    free.forEach((l, b) => {
      covariance[k]![l] = inverse.get(a, b) * scales[k]! * scales[l]!;
      gain += covariance[k]![l]! * gradient[k]! * gradient[l]!;
    });
  });
  return { ok: true, chiSquare, gain, free, scales, covariance };
}
