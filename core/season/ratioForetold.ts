import { studentTQuantile } from '#core/numeric/studentT.ts';

export interface RatioForetold {
  /** Geometric mean of what came of what. */
  ratio: number;
  /** What comes of the new one by it. */
  value: number;
  /** The new one lies between, 95 times of 100; null with a single case, of which no range can be told. */
  low95: number | null;
  high95: number | null;
}

/**
 * What comes of `from`, by earlier cases of the same kind. Ln of the ratios is taken to be normal: the range is that of one more case,
 * `mean ± t(0.975; n - 1) s sqrt(1 + 1/n)`, the usual prediction interval of a normal sample. Null without a case.
 */
export function ratioForetold(
  cases: readonly { from: number; to: number }[],
  from: number,
): RatioForetold | null {
  const n = cases.length;
  if (n === 0) return null;
  const logs = cases.map((one) => Math.log(one.to / one.from));
  const mean = logs.reduce((sum, log) => sum + log, 0) / n;
  const ratio = Math.exp(mean);
  if (n === 1) return { ratio, value: from * ratio, low95: null, high95: null };
  const variance = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / (n - 1);
  const half = studentTQuantile(0.975, n - 1) * Math.sqrt(variance * (1 + 1 / n));
  return {
    ratio,
    value: from * ratio,
    low95: from * Math.exp(mean - half),
    high95: from * Math.exp(mean + half),
  };
}
