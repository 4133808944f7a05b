/** The x with `L x = b`, L a lower triangle of n rows one after another. */
export function solveLower(lower: Float64Array, n: number, b: ArrayLike<number>): Float64Array {
  const x = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let sum = b[i]!;
    for (let k = 0; k < i; k++) sum -= lower[i * n + k]! * x[k]!;
    x[i] = sum / lower[i * n + i]!;
  }
  return x;
}

/** The x with `L^T x = b`. */
export function solveUpper(lower: Float64Array, n: number, b: ArrayLike<number>): Float64Array {
  const x = new Float64Array(n);
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!;
    for (let k = i + 1; k < n; k++) sum -= lower[k * n + i]! * x[k]!;
    x[i] = sum / lower[i * n + i]!;
  }
  return x;
}

/** The inverse of `L L^T`, rows one after another. */
export function inverseOfSquare(lower: Float64Array, n: number): number[][] {
  return Array.from({ length: n }, (_, column) => {
    const unit = new Float64Array(n);
    unit[column] = 1;
    return [...solveUpper(lower, n, solveLower(lower, n, unit))];
  });
}
