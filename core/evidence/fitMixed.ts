import { gradient, hessian } from '../numeric/differences.ts';
import { positiveInverse } from '../numeric/positiveInverse.ts';
import { simplexMinimum } from '../numeric/simplexMinimum.ts';
import { inverseOfSquare, solveLower, solveUpper } from '../numeric/triangle.ts';
import {
  type CrossProducts,
  columns,
  crossProducts,
  deviance,
  lambdaOf,
  type MixedProblem,
  profileAt,
  randomRoot,
  turned,
} from './mixedProfile.ts';

/** A linear mixed-effects regression as fitted. */
export interface MixedFit {
  fixed: readonly number[];
  covariance: readonly (readonly number[])[];
  residualSd: number;
  /** Standard deviations of the random effects between groups, column by column. */
  randomSds: readonly number[];
  /** Between the two random effects; null with one, or where either does not vary. */
  correlation: number | null;
  deviance: number;
  observations: number;
  groups: readonly GroupEffect[];
  /** How the fixed effects' covariance shifts with each variance parameter, and how sure these are: for `contrast`. */
  shifts: readonly (readonly (readonly number[])[])[];
  parameterCovariance: readonly (readonly number[])[];
}

/** What one group adds to the fixed effects, shrunken toward none. */
export interface GroupEffect {
  name: string;
  observations: number;
  effect: readonly number[];
  /** Covariance of (fixed estimate, estimated less true effect): fixed columns first. */
  jointCovariance: readonly (readonly number[])[];
}

const SIMPLEX_EDGE = 0.5;
const SIMPLEX_TOLERANCE = 1e-5;
const NEWTON_STEPS = 8;
/** A step that takes less than this off the deviance changes nothing that anybody reads. */
const SETTLED = 1e-12;
const STEP = 1e-4;
/** Second differences take a longer step: their rounding grows with its square. */
const SECOND_STEP = 2e-3;

/**
 * Fits by the deviance over the relative covariance factor, all else at its best (Bates et al. 2015, J Stat Softw
 * 67(1)): a simplex from two starts, then Newton's rule. The deviance is even in each column of Lambda, so that no
 * bounds are needed and a variance of nought is an ordinary minimum. Requires more observations than fixed columns.
 */
export function fitMixed(problem: MixedProblem): MixedFit {
  const scales = problem.random[0]!.map((_, k) => {
    const meanSquare = problem.random.reduce((sum, row) => sum + row[k]! ** 2, 0) / problem.random.length;
    return meanSquare > 0 ? Math.sqrt(meanSquare) : 1;
  });
  const random = problem.random.map((row) => row.map((z, k) => z / scales[k]!));
  const plain = profileAt(crossProducts({ ...problem, random }), scales.length === 1 ? [0] : [0, 0, 0]).beta;
  // What plain least squares explains is taken off first: less is lost to rounding.
  const values = problem.values.map(
    (y, row) => y - problem.fixed[row]!.reduce((sum, x, k) => sum + x * plain[k]!, 0),
  );
  const cross = crossProducts({ ...problem, values, random });
  const theta = bestTheta(cross);
  const fit = fitAt(cross, theta, scales);
  return { ...fit, fixed: fit.fixed.map((b, k) => b + plain[k]!) };
}

function bestTheta(cross: CrossProducts): number[] {
  const at = (theta: readonly number[]) => deviance(cross, profileAt(cross, theta), null);
  const starts =
    cross.q === 1
      ? [[1], [0.1]]
      : [
          [1, 0, 1],
          [0.2, 0, 0.2],
        ];
  const found = starts
    .map((start) => simplexMinimum(at, start, SIMPLEX_EDGE, SIMPLEX_TOLERANCE))
    .sort((a, b) => at(a) - at(b));
  let theta = found[0]!;
  for (let turn = 0; turn < NEWTON_STEPS; turn++) {
    const slope = gradient(
      at,
      theta,
      theta.map(() => STEP),
    );
    const inverse = positiveInverse(
      hessian(
        at,
        theta,
        theta.map(() => SECOND_STEP),
      ),
    );
    const step = theta.map((_, i) => slope.reduce((sum, g, j) => sum + inverse[i]![j]! * g, 0));
    const gain = step.reduce((sum, d, i) => sum + d * slope[i]!, 0);
    const next = theta.map((t, i) => t - step[i]!);
    if (gain < SETTLED || !(at(next) <= at(theta) + SETTLED)) break;
    theta = next;
  }
  return theta;
}

function fitAt(cross: CrossProducts, theta: readonly number[], scales: readonly number[]): MixedFit {
  const { n, p, q } = cross;
  const profile = profileAt(cross, theta);
  const free = cross.method === 'reml' ? n - p : n;
  const sigma = Math.sqrt(Math.max(0, profile.residual) / free);
  const covarianceAt = (parameters: readonly number[]) => {
    const { fixedRoot } = profileAt(cross, parameters.slice(0, -1));
    return inverseOfSquare(fixedRoot, p).map((row) => row.map((v) => v * parameters.at(-1)! ** 2));
  };
  const parameters = [...theta, sigma];
  const steps = (share: number) => [...theta.map(() => share), share * sigma];
  const whole = (x: readonly number[]) => deviance(cross, profileAt(cross, x.slice(0, -1)), x.at(-1)!);
  const covariance = covarianceAt(parameters);
  const lambda = lambdaOf(theta, q);
  const spread = (i: number, j: number) => {
    let sum = 0;
    for (let k = 0; k < q; k++) sum += lambda[i * q + k]! * lambda[j * q + k]!;
    return (sigma ** 2 * sum) / (scales[i]! * scales[j]!);
  };
  const randomSds = scales.map((_, k) => Math.sqrt(spread(k, k)));
  const both = q === 2 ? randomSds[0]! * randomSds[1]! : 0;
  return {
    fixed: [...profile.beta],
    covariance,
    residualSd: sigma,
    randomSds,
    correlation: both > 0 ? spread(0, 1) / both : null,
    deviance: deviance(cross, profile, null),
    observations: n,
    groups: cross.groups.map((group) =>
      groupEffect(cross, group, lambda, profile.beta, covariance, sigma, scales),
    ),
    shifts: parameters.map((_, k) => {
      const h = steps(STEP)[k]!;
      const [above, below] = [h, -h].map((step) =>
        covarianceAt(parameters.map((v, i) => (i === k ? v + step : v))),
      );
      return covariance.map((row, i) => row.map((_, j) => (above![i]![j]! - below![i]![j]!) / (2 * h)));
    }),
    // Twice the inverse of the deviance's second derivatives.
    parameterCovariance: positiveInverse(hessian(whole, parameters, steps(SECOND_STEP))).map((row) =>
      row.map((v) => 2 * v),
    ),
  };
}

/** b = Lambda A^-1 Lambda^T (Z^T y - Z^T X beta), A = Lambda^T Z^T Z Lambda + I, with its joint covariance (Henderson 1975). */
function groupEffect(
  { p, q }: CrossProducts,
  { name, count, zz, zx, zy }: CrossProducts['groups'][number],
  lambda: Float64Array,
  beta: Float64Array,
  covariance: readonly (readonly number[])[],
  sigma: number,
  scales: readonly number[],
): GroupEffect {
  const root = randomRoot(zz, lambda, q);
  const shrunk = (column: Float64Array) => {
    const u = solveUpper(root, q, solveLower(root, q, turned(lambda, column, q, 1)));
    return scales.map((scale, i) => u.reduce((sum, value, k) => sum + lambda[i * q + k]! * value, 0) / scale);
  };
  const left = Float64Array.from(
    zy,
    (value, i) => value - beta.reduce((sum, b, k) => sum + zx[i * p + k]! * b, 0),
  );
  const byFixed = columns(zx, q, p).map(shrunk);
  const own = scales.map((scale, i) =>
    shrunk(Float64Array.from({ length: q }, (_, k) => (k === i ? sigma ** 2 / scale : 0))),
  );
  const cross = scales.map((_, i) =>
    covariance.map((_, k) => -byFixed.reduce((sum, h, m) => sum + h[i]! * covariance[m]![k]!, 0)),
  );
  const within = scales.map((_, i) =>
    scales.map((_, j) => own[i]![j]! - byFixed.reduce((sum, h, m) => sum + h[j]! * cross[i]![m]!, 0)),
  );
  return {
    name,
    observations: count,
    effect: shrunk(left),
    jointCovariance: [
      ...covariance.map((row, k) => [...row, ...cross.map((c) => c[k]!)]),
      ...cross.map((row, i) => [...row, ...within[i]!]),
    ],
  };
}
