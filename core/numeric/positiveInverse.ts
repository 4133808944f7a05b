/** An eigenvalue below this share of the greatest counts as none. */
const FLAT = 1e-7;
const MOST_SWEEPS = 50;

/**
 * The inverse of a symmetric matrix over those of its directions in which it is truly positive; flat and falling
 * directions are left out (their share of the inverse is nought). Eigenvectors by Jacobi's rotations.
 */
export function positiveInverse(symmetric: readonly (readonly number[])[]): number[][] {
  const { values, vectors } = eigen(symmetric);
  const least = FLAT * Math.max(0, ...values);
  return symmetric.map((_, i) =>
    symmetric.map((_, j) =>
      values.reduce(
        (sum, value, k) => (value > least ? sum + (vectors[i]![k]! * vectors[j]![k]!) / value : sum),
        0,
      ),
    ),
  );
}

function eigen(symmetric: readonly (readonly number[])[]): { values: number[]; vectors: number[][] } {
  const n = symmetric.length;
  const a = symmetric.map((row) => [...row]);
  const vectors = a.map((_, i) => a.map((_, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let [off, size] = [0, 0];
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        size += a[i]![j]! ** 2;
        if (i !== j) off += a[i]![j]! ** 2;
      }
    if (off <= 1e-30 * size) break;
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) rotate(a, vectors, p, q);
  }
  return { values: a.map((row, i) => row[i]!), vectors };
}

/** Turns the plane of p and q so that their element becomes nought. */
function rotate(a: number[][], vectors: number[][], p: number, q: number): void {
  if (a[p]![q] === 0) return;
  const half = (a[q]![q]! - a[p]![p]!) / (2 * a[p]![q]!);
  const t = (half >= 0 ? 1 : -1) / (Math.abs(half) + Math.hypot(half, 1));
  const c = 1 / Math.hypot(t, 1);
  const s = t * c;
  for (const row of [...a, ...vectors]) {
    const [left, right] = [row[p]!, row[q]!];
    row[p] = c * left - s * right;
    row[q] = s * left + c * right;
  }
  const [upper, lower] = [a[p]!, a[q]!];
  for (let k = 0; k < a.length; k++) {
    const [left, right] = [upper[k]!, lower[k]!];
    upper[k] = c * left - s * right;
    lower[k] = s * left + c * right;
  }
}
