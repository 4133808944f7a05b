import { normalCdf } from '#core/numeric/normal.ts';

/** How the ranks of one quantity are spread over many simulated lifters. */
export interface RankSummary {
  count: number;
  /** Share of lifters whose truth lies in the 80 and in the 95 % interval. */
  in80: number;
  in95: number;
  /** Probability of ranks at least so uneven where the truth is that they are even (chi-square, ten bins). */
  p: number;
}

const BINS = 10;

/** Ranks of a calibrated estimate are spread evenly over 0 to 1 (Talts et al. 2018, arXiv:1804.06788). */
export function rankSummary(ranks: readonly number[]): RankSummary {
  const counts = Array.from({ length: BINS }, () => 0);
  for (const rank of ranks) counts[Math.min(BINS - 1, Math.floor(rank * BINS))]!++;
  const expected = ranks.length / BINS;
  const square = counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
  const shareWithin = (low: number) =>
    ranks.filter((rank) => rank > low && rank < 1 - low).length / ranks.length;
  return {
    count: ranks.length,
    in80: shareWithin(0.1),
    in95: shareWithin(0.025),
    p: chiSquareAbove(square, BINS - 1),
  };
}

/** Upper tail of chi-square: its cube root is nearly normal (Wilson & Hilferty 1931), here to 0.002. */
export function chiSquareAbove(square: number, degrees: number): number {
  const part = 2 / (9 * degrees);
  return normalCdf(-(Math.cbrt(square / degrees) - (1 - part)) / Math.sqrt(part));
}
