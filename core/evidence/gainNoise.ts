import type { LiftNoise } from './liftNoise.ts';

/**
 * Variance of the greatest of n independent standard normal numbers, n from 1 on (Harter 1961, Biometrika 48:151, from
 * memory; of two 1 - 1 / pi). The best of many days is a steadier number than any one of them.
 */
export const VARIANCE_OF_BEST = [1, 0.6817, 0.5595, 0.4917, 0.4475, 0.4159, 0.3919, 0.3729, 0.3574, 0.3443];

/** A gain from one best to another, as far as its noise goes; bars in kg. */
export interface NoisyGain {
  from: { barKg: number };
  to: { barKg: number };
  /** Days on which the setup was done hard before either best: each is the best of so many. */
  fromDays: number;
  toDays: number;
  /** The platform lift that the gain is counted by. */
  step: { before: { barKg: number } };
}

/** Standard deviation of the noise of a gain: of the two bests that it is reckoned from, over the platform lift that gains are counted by. */
export function gainNoise(gains: readonly NoisyGain[], { share }: LiftNoise): number {
  if (gains.length === 0) return 0;
  const variances = gains.map(
    ({ from, to, fromDays, toDays, step }) =>
      (ofBest(fromDays) * from.barKg ** 2 + ofBest(toDays) * to.barKg ** 2) / step.before.barKg ** 2,
  );
  return share * Math.sqrt(variances.reduce((sum, variance) => sum + variance, 0) / gains.length);
}

function ofBest(days: number): number {
  return VARIANCE_OF_BEST[Math.min(days, VARIANCE_OF_BEST.length) - 1]!;
}
