import { cholesky } from './cholesky.ts';
import { evenNormals } from './evenNormals.ts';
import { solveLower } from './triangle.ts';
import { normed, type Weights, weightsOfLn } from './weightsOfLn.ts';

/** A normal distribution by its mean and the lower triangle of its covariance's root. */
export interface NormalShape {
  mean: Float64Array;
  root: Float64Array;
}

export interface WeightedSample extends Weights {
  points: Float64Array[];
}

/** How long to sample: rounds of `count` points each until they are worth `enough`, but at most `rounds` of them. */
export interface Effort {
  count: number;
  rounds: number;
  enough: number;
}

/** Weights are flattened for finding a proposal until they are worth so many points for each dimension. */
const WORTH_PER_DIMENSION = 2;

/**
 * Weighted points of a distribution known by the ln of its density but for a constant: adaptive importance sampling.
 * The first round draws from `near`, every later one from the normal with mean and covariance of all points so far, each so
 * many times `wider` in every dimension that its tails are never thinner than those sought. In the end each point counts by
 * its density over the mean of all proposals, as if drawn from their mixture (the balance heuristic: Veach & Guibas 1995; Cornuet et al. 2012 for several rounds). Deterministic. `lnDensity` is asked once for each point, in order.
 */
export function importanceSample(
  near: NormalShape,
  wider: readonly number[],
  { count, rounds, enough }: Effort,
  lnDensity: (x: Float64Array) => number,
): WeightedSample {
  const n = near.mean.length;
  const first = { mean: near.mean, root: near.root.map((value, at) => wider[at % n]! * value) };
  const even = evenNormals(count * rounds, n);
  const points: Float64Array[] = [];
  const lnDensities: number[] = [];
  const proposals: NormalShape[] = [];
  /** ln of the sum of the proposals' densities at each point, but for a constant. */
  const lnMixtures: number[] = [];
  let sample: WeightedSample = { points, weights: new Float64Array(0), effective: 0 };
  while (proposals.length < rounds && sample.effective < enough) {
    const shape = proposals.length === 0 ? first : fitted(sample, first, wider);
    proposals.push(shape);
    points.forEach((x, i) => {
      lnMixtures[i] = lnSum(lnMixtures[i]!, lnNormal(x, shape));
    });
    for (const z of even.slice(points.length, points.length + count)) {
      const x = pointAt(shape, z);
      points.push(x);
      lnMixtures.push(proposals.map((one) => lnNormal(x, one)).reduce(lnSum));
      lnDensities.push(lnDensity(x));
    }
    sample = { points, ...weightsOfLn(lnDensities.map((ln, i) => lnRatio(ln, lnMixtures[i]!))) };
  }
  return sample;
}

function pointAt({ mean, root }: NormalShape, z: Float64Array): Float64Array {
  const n = mean.length;
  return mean.map((value, i) => {
    let sum = value;
    for (let k = 0; k <= i; k++) sum += root[i * n + k]! * z[k]!;
    return sum;
  });
}

/** A point whose density cannot be told weighs nothing. */
function lnRatio(lnDensity: number, lnMixture: number): number {
  return Number.isNaN(lnDensity) ? Number.NEGATIVE_INFINITY : lnDensity - lnMixture;
}

/** ln of the sum of two numbers that are given by their ln. */
function lnSum(a: number, b: number): number {
  const most = Math.max(a, b);
  return most + Math.log1p(Math.exp(Math.min(a, b) - most));
}

function lnNormal(x: Float64Array, { mean, root }: NormalShape): number {
  const n = mean.length;
  const z = solveLower(
    root,
    n,
    x.map((value, i) => value - mean[i]!),
  );
  let ln = 0;
  for (let i = 0; i < n; i++) ln -= 0.5 * z[i]! * z[i]! + Math.log(root[i * n + i]!);
  return ln;
}

/** Mean and covariance of the points, their weights flattened where few of them carry all; never quite without `before`. */
function fitted(
  { points, weights }: WeightedSample,
  before: NormalShape,
  wider: readonly number[],
): NormalShape {
  const n = before.mean.length;
  const { weights: flat } = flattened(weights, WORTH_PER_DIMENSION * n);
  const mean = new Float64Array(n);
  points.forEach((x, i) => {
    for (let k = 0; k < n; k++) mean[k]! += flat[i]! * x[k]!;
  });
  const covariance = new Float64Array(n * n);
  points.forEach((x, i) => {
    for (let k = 0; k < n; k++)
      for (let l = 0; l < n; l++)
        covariance[k * n + l]! += flat[i]! * (x[k]! - mean[k]!) * (x[l]! - mean[l]!);
  });
  // A sample of few points cannot tell all directions: half of the covariance stays the earlier one's.
  for (let k = 0; k < n; k++)
    for (let l = 0; l < n; l++) {
      let earlier = 0;
      for (let m = 0; m <= Math.min(k, l); m++) earlier += before.root[k * n + m]! * before.root[l * n + m]!;
      covariance[k * n + l] =
        (1 - EARLIER) * wider[k]! * wider[l]! * covariance[k * n + l]! + EARLIER * earlier;
    }
  return { mean, root: cholesky(covariance, n) };
}
const EARLIER = 0.5;

/**
 * Weights worth n to the power n / (n + `doubt`). A sample of n tells its own tails too thin: its 80 % interval holds the next
 * draw with (n - 1) / (n + 1) of 80 % alone. Less uneven weights lean towards the proposals, which are wider; with
 * many points nothing changes.
 */
export function doubted({ weights, effective }: Weights, doubt: number): Weights {
  return normed(weights.map((weight) => weight ** (effective / (effective + doubt))));
}

/**
 * The weights as they are if they are worth `wanted` points, else to the power at which they are: a distribution of the
 * same points, wider and never narrower.
 */
export function flattened(weights: Float64Array, wanted: number): Weights {
  let power = 1;
  let flat = normed(weights);
  while (flat.effective < Math.min(wanted, weights.length / 2) && power > 0.05) {
    power *= 0.8;
    flat = normed(weights.map((weight) => weight ** power));
  }
  return flat;
}
