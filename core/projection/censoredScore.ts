/**
 * A forecast's own probabilities of a truth that is only known to lie between two bounds: the distribution function at the
 * best made bar and at the lightest one missed above it (1: none was).
 */
export interface Placed {
  low: number;
  high: number;
}

/** How often a central interval held the truth, where its place within the bounds is not known. */
export interface Coverage {
  /** The interval's own probability. */
  share: number;
  /** By the forecast's own distribution between the bounds: `share` if the forecasts are right. */
  held: number;
  /** Share that it surely held, and that it may have held. */
  least: number;
  most: number;
}

/**
 * Coverage from the non-randomised probability integral transform (Czado, Gneiting & Held 2009, Biometrics 65:1254; from memory):
 * between its bounds the transform is spread evenly, which keeps it uniform for a right forecast.
 */
export function coverage(placed: readonly Placed[], share: number): Coverage {
  const [from, to] = [(1 - share) / 2, (1 + share) / 2];
  return {
    share,
    held: meanOf(placed, (one) => evenShare(one, from, to)),
    least: meanOf(placed, ({ low, high }) => (low >= from && high <= to ? 1 : 0)),
    most: meanOf(placed, ({ low, high }) => (low <= to && high >= from ? 1 : 0)),
  };
}

/** Share of the truths in each of `bins` equal parts of the forecasts' probability; all alike if the forecasts are right. */
export function transformBins(placed: readonly Placed[], bins: number): number[] {
  return Array.from({ length: bins }, (_, i) =>
    meanOf(placed, (one) => evenShare(one, i / bins, (i + 1) / bins)),
  );
}

/** Share of what lies evenly between the bounds that falls within `from` and `to`. */
function evenShare({ low, high }: Placed, from: number, to: number): number {
  if (high - low < 1e-12) return low >= from && (low < to || to === 1) ? 1 : 0;
  return Math.max(0, Math.min(high, to) - Math.max(low, from)) / (high - low);
}

function meanOf<T>(list: readonly T[], value: (one: T) => number): number {
  return list.length === 0 ? 0 : list.reduce((sum, one) => sum + value(one), 0) / list.length;
}
