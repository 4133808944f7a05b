import { type ParameterName, type Parameters, type Prior, parameterNames } from './parameters.ts';

/** What one lifter's log told of the parameters under a prior of its own. */
export interface LearnedShape {
  /** Body build: standardised, 0 for the club's middle; see `builds`. */
  build: number;
  learned: { name: ParameterName; mean: number; sd: number; priorMean: number; priorSd: number }[];
}

/** The club's middle may lie this share of the population's spread off, and a unit of build shift it by that one. */
const MIDDLE_SHARE = 0.3;
const BUILD_SHARE = 0.3;
/** The spread within the club is believed to be the population's as if so many lifters had shown it. */
const SPREAD_WORTH = 15;
/** Never so narrow that a new lifter could not differ. */
const LEAST_SPREAD = 0.7;
const STEPS = 25;

/**
 * Partial pooling: for every parameter the middle of the club, its shift with body build and the spread between
 * lifters, from what each lifter's log told beyond its own prior (normal likelihoods; empirical Bayes by the EM rule,
 * with the population as hyperprior). With few lifters, or lifters who tell little, the population's prior comes back.
 */
export function clubPrior(lifters: readonly LearnedShape[], population: Prior): (build: number) => Prior {
  const found = parameterNames.map((name) => ({ name, ...poolOne(name, lifters, population) }));
  return (build) => {
    const mean: Partial<Parameters> = {};
    const sd: Partial<Parameters> = {};
    for (const { name, middle, perBuild, spread } of found) {
      mean[name] = middle + perBuild * build;
      sd[name] = spread;
    }
    return { mean: mean as Parameters, sd: sd as Parameters };
  };
}

/** Builds of a club's lifters: ln of body mass over stature squared, less the middle, in steps of 15 per cent. */
export function builds(lifters: readonly { bodyMassKg: number; statureM: number }[]): number[] {
  const raw = lifters.map(({ bodyMassKg, statureM }) => Math.log(bodyMassKg / statureM ** 2));
  const middle = raw.reduce((sum, value) => sum + value, 0) / Math.max(1, raw.length);
  return raw.map((value) => Math.min(Math.max((value - middle) / 0.15, -2), 2));
}

function poolOne(
  name: ParameterName,
  lifters: readonly LearnedShape[],
  population: Prior,
): { middle: number; perBuild: number; spread: number } {
  const wide = population.sd[name];
  const told = lifters.flatMap(({ build, learned }) => {
    const own = learned.find((one) => one.name === name);
    if (!own) return [];
    const precision = 1 / own.sd ** 2 - 1 / own.priorSd ** 2;
    // What hardly differs from its prior tells nothing.
    if (!(precision > 0.05 / own.priorSd ** 2)) return [];
    const value = (own.mean / own.sd ** 2 - own.priorMean / own.priorSd ** 2) / precision;
    return [{ build, value, variance: 1 / precision }];
  });
  const varianceBy = ({ middle, perBuild }: Line, before: number) => {
    const squares = told.reduce(
      (sum, { build, value, variance: own }) => {
        const share = before / (before + own);
        return sum + (share * (value - middle - perBuild * build)) ** 2 + share * own;
      },
      SPREAD_WORTH * wide ** 2,
    );
    return squares / (SPREAD_WORTH + told.length);
  };
  let variance = wide ** 2;
  let line = regress(told, variance, population.mean[name], wide);
  for (let step = 1; step < STEPS; step++) {
    variance = varianceBy(line, variance);
    line = regress(told, variance, population.mean[name], wide);
  }
  const { middle, perBuild, uncertain } = line;
  const spread = Math.max(LEAST_SPREAD * wide, Math.sqrt(varianceBy(line, variance) + uncertain));
  return { middle, perBuild, spread: told.length === 0 ? wide : spread };
}

type Line = ReturnType<typeof regress>;

/** Middle and slope by weighted least squares with normal priors; the variance of the middle. */
function regress(
  told: readonly { build: number; value: number; variance: number }[],
  variance: number,
  populationMean: number,
  wide: number,
): { middle: number; perBuild: number; uncertain: number } {
  let a = 1 / (MIDDLE_SHARE * wide) ** 2;
  let b = 0;
  let c = 1 / (BUILD_SHARE * wide) ** 2;
  let p = 0;
  let q = 0;
  for (const { build, value, variance: own } of told) {
    const weight = 1 / (variance + own);
    const off = value - populationMean;
    a += weight;
    b += weight * build;
    c += weight * build * build;
    p += weight * off;
    q += weight * build * off;
  }
  const determinant = a * c - b * b;
  return {
    middle: populationMean + (c * p - b * q) / determinant,
    perBuild: (a * q - b * p) / determinant,
    uncertain: c / determinant,
  };
}
