import { grouped } from '#core/numeric/grouped.ts';
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
  alike: AlikeGroups[];
  xx: Float64Array;
  xy: Float64Array;
  yy: number;
}

/** Groups with the same Z^T Z, as all who were tested at the same times: the likelihood needs but sums over them. */
interface AlikeGroups {
  count: number;
  zz: Float64Array;
  /** With w = Z^T (X, y) of a group, q rows: sums over the groups of w_k w_l^T, for (k, l) of `pairsOf(q)`, those off the diagonal with their transposes. */
  sums: Float64Array[];
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
  const all = [...byName.values()];
  return { n: values.length, p, q, method, groups: all, alike: alikeGroups(all, p, q), xx, xy, yy };
}

/** Rows of Z^T two by two. */
function pairsOf(q: number): readonly (readonly [number, number])[] {
  return q === 1 ? ONE_ROW : TWO_ROWS;
}
const ONE_ROW = [[0, 0]] as const;
const TWO_ROWS = [
  [0, 0],
  [0, 1],
  [1, 1],
] as const;

function alikeGroups(groups: CrossProducts['groups'], p: number, q: number): AlikeGroups[] {
  return [...grouped(groups, ({ zz }) => zz.join()).values()].map((members) => {
    const sums = pairsOf(q).map(() => new Float64Array((p + 1) ** 2));
    for (const { zx, zy } of members) {
      const rows = Array.from({ length: q }, (_, k) => [...zx.subarray(k * p, (k + 1) * p), zy[k]!]);
      for (const [at, [k, l]] of pairsOf(q).entries()) {
        addOuter(sums[at]!, rows[k]!, rows[l]!);
        if (k !== l) addOuter(sums[at]!, rows[l]!, rows[k]!);
      }
    }
    return { count: members.length, zz: members[0]!.zz, sums };
  });
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

/** Penalized least squares, group by group (Bates et al. 2015, J Stat Softw 67(1), section 3), groups that are alike at once. */
export function profileAt(cross: CrossProducts, theta: readonly number[]): Profile {
  const { p, q } = cross;
  const lambda = lambdaOf(theta, q);
  const xx = Float64Array.from(cross.xx);
  const xy = Float64Array.from(cross.xy);
  let residual = cross.yy;
  let lnDetRandom = 0;
  for (const { count, zz, sums } of cross.alike) {
    const root = randomRoot(zz, lambda, q);
    for (let i = 0; i < q; i++) lnDetRandom += count * 2 * Math.log(root[i * q + i]!);
    const half = rowsOfLambda(lambda, q).map((row) => solveLower(root, q, row));
    pairsOf(q).forEach(([k, l], at) => {
      const weight = dot(half[k]!, half[l]!);
      const sum = sums[at]!;
      for (let i = 0; i < p; i++) {
        for (let j = 0; j < p; j++) xx[i * p + j]! -= weight * sum[i * (p + 1) + j]!;
        xy[i]! -= weight * sum[i * (p + 1) + p]!;
      }
      residual -= weight * sum.at(-1)!;
    });
  }
  const fixedRoot = cholesky(xx, p);
  const half = solveLower(fixedRoot, p, xy);
  let lnDetFixed = 0;
  for (let i = 0; i < p; i++) lnDetFixed += 2 * Math.log(fixedRoot[i * p + i]!);
  residual -= dot(half, half);
  return { lnDetRandom, fixedRoot, lnDetFixed, residual, beta: solveUpper(fixedRoot, p, half) };
}

/** Columns of Lambda^T. */
function rowsOfLambda(lambda: Float64Array, q: number): Float64Array[] {
  return Array.from({ length: q }, (_, k) => lambda.subarray(k * q, (k + 1) * q));
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
