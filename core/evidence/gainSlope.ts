import { contrast, type Effect, effectOf } from './contrast.ts';
import { fitMixed, type MixedFit } from './fitMixed.ts';

/** Between two meets of a lifter: what was gained at one exact setup and on the platform, as shares of the platform lift before. */
export interface GainPair {
  lifterId: string;
  gymGain: number;
  platformGain: number;
  /** Lifted in supportive equipment at both meets. */
  equipped: boolean;
}

/** How much of a gym gain reached the platform: 1 is kilogram for kilogram. */
export interface GainSlope {
  lifters: number;
  observations: number;
  /** As the numbers lie, pulled toward none by the noise of single gym lifts. */
  naive: Effect;
  /** The same with that pull taken out; null where noise is most of what the gains show. */
  adjusted: Effect | null;
  /** Share of the spread of gym gains that is more than noise. */
  reliability: number;
  byLifter: { lifterId: string; observations: number; naive: Effect; adjusted: Effect | null }[];
}

/** Fewer tell nothing (judgement). */
const LEAST_LIFTERS = 3;
const LEAST_PAIRS = 8;
/** Gains that differ by less (standard deviation) are all one gain. */
const LEAST_SPREAD = 1e-3;
/** Below this the noise is the greater part, and taking it out would be a guess. */
const LEAST_RELIABILITY = 0.5;

/**
 * `platformGain = a + b gymGain`, both varying from lifter to lifter. The noise of a gym gain (its variance v, known from
 * elsewhere) flattens the slope by the reliability `r = 1 - v / Var(gymGain)` (Fuller 1987, Measurement Error Models,
 * section 1.1): the adjusted slope is b / r, its variance `Var(b) / r^2 + (b / r)^2 ((1 - r) / r)^2 2 / (n - 1)`, the last
 * for the variance that r is reckoned from. Null where there are too few lifters or pairs, or no spread of gains.
 */
export function gainSlope(pairs: readonly GainPair[], gymGainNoiseSd: number): GainSlope | null {
  const lifters = new Set(pairs.map(({ lifterId }) => lifterId)).size;
  if (lifters < LEAST_LIFTERS || pairs.length < LEAST_PAIRS) return null;
  const spread = varianceOf(pairs.map(({ gymGain }) => gymGain));
  if (!(spread > LEAST_SPREAD ** 2)) return null;
  const fit = fitGains(
    pairs,
    pairs.map(({ gymGain }) => [1, gymGain]),
  );
  const reliability = Math.max(0, 1 - gymGainNoiseSd ** 2 / spread);
  const freed = (naive: Effect) => adjusted(naive, reliability, pairs.length);
  const naive = contrast(fit, [0, 1]);
  return {
    lifters,
    observations: pairs.length,
    naive,
    adjusted: freed(naive),
    reliability,
    byLifter: fit.groups.map((group) => {
      const own = contrast(fit, [0, 1], { group, ofGroup: [0, 1] });
      return {
        lifterId: group.name,
        observations: group.observations,
        naive: own,
        adjusted: freed(own),
      };
    }),
  };
}

/** Slopes raw and equipped, and equipped less raw. */
export interface SlopesByEquipment {
  raw: { lifters: number; observations: number; naive: Effect; adjusted: Effect | null };
  equipped: SlopesByEquipment['raw'];
  difference: { naive: Effect; adjusted: Effect | null };
}

/** The same regression with a level and a slope of their own for equipped lifting; null where either side has too few. */
export function slopesByEquipment(
  pairs: readonly GainPair[],
  gymGainNoiseSd: number,
): SlopesByEquipment | null {
  const sides = [false, true].map((equipped) => pairs.filter((pair) => pair.equipped === equipped));
  const counts = sides.map((side) => ({
    lifters: new Set(side.map(({ lifterId }) => lifterId)).size,
    observations: side.length,
  }));
  if (counts.some(({ lifters, observations }) => lifters < LEAST_LIFTERS || observations < LEAST_PAIRS))
    return null;
  const spreads = sides.map((side) => varianceOf(side.map(({ gymGain }) => gymGain)));
  if (!spreads.every((spread) => spread > LEAST_SPREAD ** 2)) return null;
  const fit = fitGains(
    pairs,
    pairs.map(({ gymGain, equipped }) => [1, gymGain, equipped ? 1 : 0, equipped ? gymGain : 0]),
  );
  const [raw, equipped] = [
    [0, 1, 0, 0],
    [0, 1, 0, 1],
  ].map((weights, side) => {
    const naive = contrast(fit, weights);
    const reliability = Math.max(0, 1 - gymGainNoiseSd ** 2 / spreads[side]!);
    return { ...counts[side]!, naive, adjusted: adjusted(naive, reliability, counts[side]!.observations) };
  });
  return {
    raw: raw!,
    equipped: equipped!,
    difference: {
      naive: contrast(fit, [0, 0, 0, 1]),
      adjusted: difference(raw!.adjusted, equipped!.adjusted),
    },
  };
}

function fitGains(pairs: readonly GainPair[], fixed: number[][]): MixedFit {
  return fitMixed({
    values: pairs.map(({ platformGain }) => platformGain),
    fixed,
    random: pairs.map(({ gymGain }) => [1, gymGain]),
    groups: pairs.map(({ lifterId }) => lifterId),
    method: 'reml',
  });
}

function adjusted(naive: Effect, reliability: number, observations: number): Effect | null {
  if (reliability < LEAST_RELIABILITY) return null;
  const value = naive.value / reliability;
  const unsure = value * ((1 - reliability) / reliability) * Math.sqrt(2 / (observations - 1));
  return effectOf(value, Math.hypot(naive.sd / reliability, unsure), naive.degreesOfFreedom);
}

/** The two slopes rest on different rows: their variances add. */
function difference(raw: Effect | null, equipped: Effect | null): Effect | null {
  if (raw === null || equipped === null) return null;
  return effectOf(
    equipped.value - raw.value,
    Math.hypot(raw.sd, equipped.sd),
    Math.min(raw.degreesOfFreedom, equipped.degreesOfFreedom),
  );
}

function varianceOf(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
}
