import { normalQuantile } from './normal.ts';

/**
 * Square roots of these step evenly through 0 to 1, each alone and each pair: neither they nor sums and differences of two, or
 * of their doubles, come nearer than 0.005 to a whole number.
 */
const STEPS = [2, 3, 5, 7, 11, 13, 17, 23, 29, 31, 37, 41, 43, 71, 73, 101, 167, 191].map(Math.sqrt);

/**
 * `count` points of a standard normal in up to 18 dimensions that fill it more evenly than chance: the additive sequence of
 * Richtmyer (1951, Los Alamos LA-1342; from memory) through the normal's quantile. Always the same points for the same sizes.
 */
export function evenNormals(count: number, dimensions: number): Float64Array[] {
  if (dimensions > STEPS.length) throw new RangeError(`at most ${STEPS.length} dimensions`);
  const steps = STEPS.slice(0, dimensions);
  return Array.from({ length: count }, (_, i) =>
    Float64Array.from(steps, (step) => {
      const share = (0.5 + (i + 1) * step) % 1;
      return normalQuantile(Math.min(Math.max(share, 1e-6), 1 - 1e-6));
    }),
  );
}
