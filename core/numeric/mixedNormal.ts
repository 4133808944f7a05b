/** Mean and covariance (square, row by row) of a normal distribution. */
export interface Moments {
  mean: Float64Array;
  covariance: Float64Array;
}

/** Mean and covariance of a mixture of distributions by theirs; the shares sum to 1. */
export function mixedNormal(parts: readonly Moments[], shares: readonly number[]): Moments {
  const n = parts[0]!.mean.length;
  const mean = new Float64Array(n);
  parts.forEach((part, k) => {
    for (let i = 0; i < n; i++) mean[i]! += shares[k]! * part.mean[i]!;
  });
  const covariance = new Float64Array(n * n);
  parts.forEach((part, k) => {
    const off = part.mean.map((value, i) => value - mean[i]!);
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++)
        covariance[i * n + j]! += shares[k]! * (part.covariance[i * n + j]! + off[i]! * off[j]!);
  });
  return { mean, covariance };
}
