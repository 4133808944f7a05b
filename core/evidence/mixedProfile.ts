import { cholesky } from '../numeric/cholesky.ts';
import { solveLower, solveUpper } from '../numeric/triangle.ts';

/**
 * `y = X beta + Z_i b_i + e`, `b_i ~ N(0, sigma^2 Lambda Lambda^T)`, `e ~ N(0, sigma^2)`: one row of X (fixed) and Z
 * (random, one or two columns) an observation, one b_i a group.
 */
export interface MixedProblem {
  values: readonly number[];
  fixed: readonly (readonly number[])[];
  random: readonly (readonly number[])[];
  /** The group of each observation. */
  groups: readonly string[];
  method: 'reml' | 'ml';
}

/** All of a problem that its likelihood needs: sums of products, group by group; matrices row after row. */
export interface CrossProducts {
  n: number;
  p: number;
  q: number;
  method: 'reml' | 'ml';
  groups: { name: string; count: number; zz: Float64Array; zx: Float64Array; zy: Float64Array }[];
  xx: Float64Array;
  xy: Float64Array;
  yy: number;
}

export function crossProducts({ values, fixed, random, groups, method }: MixedProblem): CrossProducts {
  const [p, q] = [fixed[0]!.length, random[0]!.length];
  const byName = new Map<string, CrossProducts['groups'][number]>();
  const xx = new Float64Array(p * p);
  const xy = new Float64Array(p);
  let yy = 0;
  values.forEach((y, row) => {
    const [x, z, name] = [fixed[row]!, random[row]!, groups[row]!];
    const group = byName.get(name) ?? {
      name,
      count: 0,
      zz: new Float64Array(q * q),
      zx: new Float64Array(q * p),
      zy: new Float64Array(q),
    };
    byName.set(name, group);
    group.count++;
    addOuter(group.zz, z, z);
    addOuter(group.zx, z, x);
    addOuter(group.zy, z, [y]);
    addOuter(xx, x, x);
    addOuter(xy, x, [y]);
    yy += y * y;
  });
  return { n: values.length, p, q, method, groups: [...byName.values()], xx, xy, yy };
}

function addOuter(sum: Float64Array, a: readonly number[], b: readonly number[]): void {
  for (let i = 0; i < a.length; i++)
    for (let j = 0; j < b.length; j++) sum[i * b.length + j]! += a[i]! * b[j]!;
}

/** The likelihood's parts at one Lambda, with beta at its best and sigma left out. */
export interface Profile {
  /** ln det of `Lambda^T Z^T Z Lambda + I`, all groups together. */
  lnDetRandom: number;
  /** Lower triangle of `X^T V^-1 X` (V: covariance of y over sigma^2). */
  fixedRoot: Float64Array;
  lnDetFixed: number;
  /** Penalized residual sum of squares. */
  residual: number;
  beta: Float64Array;
}

/** Lambda of its elements: (intercept), or (intercept; with slope, slope). */
export function lambdaOf(theta: readonly number[], q: number): Float64Array {
  return q === 1 ? Float64Array.of(theta[0]!) : Float64Array.of(theta[0]!, 0, theta[1]!, theta[2]!);
}

/** Penalized least squares, group by group (Bates et al. 2015, J Stat Softw 67(1), section 3). */
export function profileAt(cross: CrossProducts, theta: readonly number[]): Profile {
  const { p, q } = cross;
  const lambda = lambdaOf(theta, q);
  const xx = Float64Array.from(cross.xx);
  const xy = Float64Array.from(cross.xy);
  let residual = cross.yy;
  let lnDetRandom = 0;
  for (const { zz, zx, zy } of cross.groups) {
    const root = randomRoot(zz, lambda, q);
    for (let i = 0; i < q; i++) lnDetRandom += 2 * Math.log(root[i * q + i]!);
    const y = solveLower(root, q, turned(lambda, zy, q, 1));
    const x = columns(turned(lambda, zx, q, p), q, p).map((column) => solveLower(root, q, column));
    for (let i = 0; i < p; i++) {
      for (let j = 0; j < p; j++) xx[i * p + j]! -= dot(x[i]!, x[j]!);
      xy[i]! -= dot(x[i]!, y);
    }
    residual -= dot(y, y);
  }
  const fixedRoot = cholesky(xx, p);
  const half = solveLower(fixedRoot, p, xy);
  let lnDetFixed = 0;
  for (let i = 0; i < p; i++) lnDetFixed += 2 * Math.log(fixedRoot[i * p + i]!);
  residual -= dot(half, half);
  return { lnDetRandom, fixedRoot, lnDetFixed, residual, beta: solveUpper(fixedRoot, p, half) };
}

/** Lower triangle of `Lambda^T Z^T Z Lambda + I` of one group. */
export function randomRoot(zz: Float64Array, lambda: Float64Array, q: number): Float64Array {
  const half = turned(lambda, zz, q, q);
  const whole = turned(lambda, transposed(half, q, q), q, q);
  for (let i = 0; i < q; i++) whole[i * q + i]! += 1;
  return cholesky(whole, q);
}

/** -2 ln likelihood (or restricted likelihood); sigma at its best where it is null. */
export function deviance(cross: CrossProducts, profile: Profile, sigma: number | null): number {
  const reml = cross.method === 'reml';
  const free = reml ? cross.n - cross.p : cross.n;
  const variance = sigma === null ? profile.residual / free : sigma ** 2;
  return (
    profile.lnDetRandom +
    (reml ? profile.lnDetFixed : 0) +
    free * Math.log(2 * Math.PI * variance) +
    profile.residual / variance
  );
}

/** `Lambda^T A`, A of q rows and `width` columns. */
export function turned(lambda: Float64Array, a: Float64Array, q: number, width: number): Float64Array {
  const out = new Float64Array(q * width);
  for (let i = 0; i < q; i++)
    for (let k = i; k < q; k++)
      for (let j = 0; j < width; j++) out[i * width + j]! += lambda[k * q + i]! * a[k * width + j]!;
  return out;
}

function transposed(a: Float64Array, rows: number, width: number): Float64Array {
  const out = new Float64Array(a.length);
  for (let i = 0; i < rows; i++) for (let j = 0; j < width; j++) out[j * rows + i] = a[i * width + j]!;
  return out;
}

export function columns(a: Float64Array, rows: number, width: number): Float64Array[] {
  return Array.from({ length: width }, (_, j) =>
    Float64Array.from({ length: rows }, (_, i) => a[i * width + j]!),
  );
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
