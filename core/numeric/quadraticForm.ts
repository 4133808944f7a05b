/** `gᵀ C g` for a covariance matrix C: the variance of what changes by `g` with each of its parameters; never below 0. */
export function quadraticForm(
  gradient: readonly number[],
  covariance: readonly (readonly number[])[],
): number {
  let sum = 0;
  gradient.forEach((a, i) => {
    gradient.forEach((b, j) => {
      sum += a * covariance[i]![j]! * b;
    });
  });
  return Math.max(sum, 0);
}
