/**
 * Lower triangle L with `L L^T = matrix` (rows one after another, n x n). A pivot that is not positive, as rounding may
 * leave where two directions are nearly one, is taken as nought and its column left out.
 */
export function cholesky(matrix: Float64Array, n: number): Float64Array {
  const lower = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    let pivot = matrix[j * n + j]!;
    for (let k = 0; k < j; k++) pivot -= lower[j * n + k]! ** 2;
    if (!(pivot > 1e-14 * matrix[j * n + j]!)) continue;
    const root = Math.sqrt(pivot);
    lower[j * n + j] = root;
    for (let i = j + 1; i < n; i++) {
      let sum = matrix[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= lower[i * n + k]! * lower[j * n + k]!;
      lower[i * n + j] = sum / root;
    }
  }
  return lower;
}
