/** Weights of points, in their order. */
export interface Weights {
  /** Summing to 1. */
  weights: Float64Array;
  /** Number of equally weighted points that they are worth (Kish). */
  effective: number;
}

/** Weights that are known by their ln but for a constant, and the ln of their sum. */
export function weightsOfLn(lnWeights: readonly number[]): Weights & { lnSum: number } {
  const most = Math.max(...lnWeights);
  const times = Float64Array.from(lnWeights, (ln) => Math.exp(ln - most));
  return { ...normed(times), lnSum: most + Math.log(times.reduce((sum, one) => sum + one, 0)) };
}

export function normed(weights: Float64Array): Weights {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const squares = weights.reduce((total, weight) => total + weight * weight, 0);
  return { weights: weights.map((weight) => weight / sum), effective: (sum * sum) / squares };
}
