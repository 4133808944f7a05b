import type { Lift } from '../lifter/populationShape.ts';
import type { LnRatio } from '../numeric/quantity.ts';

/**
 * What is learned of a lifter in one lift beside the strength itself, all on scales on which the prior is normal:
 *
 *   lnMaxSpeed     ln of the top speed over the population's
 *   slope          added to the slope of ln g(s)
 *   lnRebound      ln of the rebound from a free start over the population's
 *   heldRebound    logit of the share of it left from a box, boards or a pause, less the population's
 *   lnTiring       ln of the strength lost per second of effort over the population's
 *   tiringBend     by how much more each further rep of a set costs than those before it: see `repCost`
 *   bandError      ln of straight total mass per share of the mean load that bands carry
 *   startError     ln of straight total mass by which another start than the reference is worth more than the shape says
 *   speedOffset    m/s between measured and modelled bar speed
 *   speedSlope     the same for each unit of surplus: m/s more, or less, than modelled the lighter the bar
 *   wraps, singlePly, multiPly, otherGear   ln of total mass in supportive equipment over raw
 *   platform       ln of total mass on the platform over an average gym day
 *   weekGain       mean change of ln total mass in a week
 *   lnDaySd        ln of the standard deviation from day to day over the population's
 *   lnWeekSd       ln of the standard deviation of a week's change over the population's
 */
export const parameterNames = [
  'lnMaxSpeed',
  'slope',
  'lnRebound',
  'heldRebound',
  'lnTiring',
  'tiringBend',
  'bandError',
  'startError',
  'speedOffset',
  'speedSlope',
  'wraps',
  'singlePly',
  'multiPly',
  'otherGear',
  'platform',
  'weekGain',
  'lnDaySd',
  'lnWeekSd',
] as const;
export type ParameterName = (typeof parameterNames)[number];
/** One value for every name, in the order of `parameterNames`. */
export type Parameters = Record<ParameterName, number>;

/** Supportive equipment by the club's names; `other` is any that is none of these. */
export type EquipmentName = 'raw' | 'wraps' | 'single-ply' | 'multi-ply' | 'other';

/** The parameter that tells what an equipment adds; null: nothing. */
export const equipmentParameter: Record<EquipmentName, ParameterName | null> = {
  raw: null,
  wraps: 'wraps',
  'single-ply': 'singlePly',
  'multi-ply': 'multiPly',
  other: 'otherGear',
};

export interface Prior {
  mean: Parameters;
  sd: Parameters;
}

/** ln of how likely a value of a parameter is before any set, but for a constant. */
export function lnPrior({ mean, sd }: Prior, name: ParameterName, value: number): number {
  return -0.5 * ((value - mean[name]) / sd[name]) ** 2;
}

/** Day-to-day standard deviation of ln strength: below the 2 to 4 % to which a tested maximum repeats (Grgic et al. 2020). */
export const DAY_SD = 0.018;
/** Standard deviation of a week's change of ln strength: assumption. */
export const WEEK_SD = 0.006;

/**
 * Before any set: how lifters differ. Assumptions, as wide as the published spreads where there are any: top speed
 * and offset so that speed at the maximum scatters by about 0.05 m/s (Helms et al. 2017); the bend of tiring so that published
 * formulas for reps lie within it (core/checks/repBend.test.ts); equipment common practice, no source; a gain of 5 % a year
 * with room for a beginner's 30.
 */
export function populationPrior(lift: Lift): Prior {
  const equipment: Record<Lift, [number, number, number]> = {
    squat: [0.06, 0.1, 0.2],
    bench: [0.02, 0.12, 0.25],
    deadlift: [0.01, 0.03, 0.06],
  };
  const [wraps, singlePly, multiPly] = equipment[lift];
  // Published load-velocity lines are steeper than the model's (docs/model.md, "rep"): half of that for the squat, where
  // they are of a guided bar, and as much as the bench press lacks.
  const speedSlope: Record<Lift, number> = { squat: 0.3, bench: 0.1, deadlift: 0 };
  return {
    mean: {
      lnMaxSpeed: 0,
      slope: 0,
      lnRebound: 0,
      heldRebound: 0,
      lnTiring: 0,
      tiringBend: 0,
      bandError: 0,
      startError: 0,
      speedOffset: 0,
      speedSlope: speedSlope[lift],
      wraps,
      singlePly,
      multiPly,
      otherGear: 0.08,
      platform: 0.005,
      weekGain: 0.001,
      lnDaySd: 0,
      lnWeekSd: 0,
    },
    sd: {
      lnMaxSpeed: 0.3,
      slope: 0.2,
      lnRebound: 0.3,
      heldRebound: 1,
      lnTiring: 0.35,
      tiringBend: 0.3,
      bandError: 0.1,
      startError: 0.04,
      speedOffset: 0.04,
      speedSlope: lift === 'squat' ? 0.35 : 0.25,
      wraps: 0.04,
      singlePly: 0.06,
      multiPly: 0.09,
      otherGear: 0.1,
      platform: 0.02,
      weekGain: 0.0015,
      lnDaySd: 0.35,
      lnWeekSd: 0.5,
    },
  };
}

/**
 * Before any set: ln of the total straight mass (bar and moved body) over body mass, wide enough for a beginner and a
 * record holder (assumption; totals of competitive lifters: Latella et al. 2020, men 5.89 (1.04) body masses).
 */
export function strengthPrior(lift: Lift): { meanLn: LnRatio; sdLn: LnRatio } {
  const share: Record<Lift, number> = { squat: 2.5, bench: 1.1, deadlift: 2.3 };
  const sdLn: Record<Lift, number> = { squat: 0.33, bench: 0.45, deadlift: 0.33 };
  return { meanLn: Math.log(share[lift]), sdLn: sdLn[lift] };
}
