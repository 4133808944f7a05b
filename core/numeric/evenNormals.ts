import { normalQuantile } from './normal.ts';

/**
 * `count` points of a `dimensions`-dimensional standard normal that fill it more evenly than chance: the additive
 * sequence on powers of the generalised golden ratio, `x = 1 / (1 + x)^(1/d)`, through the normal's quantile. Always
 * the same points for the same sizes.
 */
export function evenNormals(count: number, dimensions: number): Float64Array[] {
  let ratio = 1.5;
  for (let i = 0; i < 60; i++) ratio = (1 + ratio) ** (1 / (dimensions + 1));
  const steps = Array.from({ length: dimensions }, (_, k) => ratio ** -(k + 1));
  return Array.from({ length: count }, (_, i) =>
    Float64Array.from(steps, (step) => {
      const share = (0.5 + (i + 1) * step) % 1;
      return normalQuantile(Math.min(Math.max(share, 1e-6), 1 - 1e-6));
    }),
  );
}
