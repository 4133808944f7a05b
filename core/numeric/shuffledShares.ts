import { seededShares } from './seededChance.ts';

const SEED = 1;

/**
 * For each of `steps` the middles of `count` even parts of (0, 1), every step in an order of its own: sums over steps scatter like those
 * of independent draws, and each step alone is filled as evenly as can be (McKay, Beckman & Conover 1979, Technometrics 21:239).
 * Always the same for the same sizes.
 */
export function shuffledShares(count: number, steps: number): Float64Array[] {
  const share = seededShares(SEED);
  return Array.from({ length: steps }, () => {
    const shares = Float64Array.from({ length: count }, (_, i) => (i + 0.5) / count);
    for (let i = count - 1; i > 0; i--) {
      const other = Math.floor(share() * (i + 1));
      [shares[i], shares[other]] = [shares[other]!, shares[i]!];
    }
    return shares;
  });
}
