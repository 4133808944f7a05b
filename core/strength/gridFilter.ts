import { normalCdf } from '../numeric/normal.ts';
import {
  BAD_DAY_BELOW,
  BAD_DAY_FACTOR,
  BAD_DAY_SHARE,
  LAST_FACTOR,
  PEAK_FACTOR,
  RESERVE_UNSAID_REPS,
  reserveSd,
  SET_SD_LN,
  SHARED_SPEED_SD_MPS,
  SLIP_SD_LN,
  SLIP_SHARE,
  SPEED_SD_MPS,
  STOP_SD_S,
  TAIL,
  WILD_SHARE,
} from './noise.ts';
import { DAY_SD, type Parameters, WEEK_SD } from './parameters.ts';
import {
  atSurplus,
  type LiftModel,
  neededSurplus,
  type ReadModel,
  type ReadTable,
  readerOf,
  repsPossible,
  stopAt,
} from './readGroup.ts';
import type { EffortGroup, Session } from './sessions.ts';
import type { SetModel } from './setModel.ts';

/** Distance of grid points in ln strength: below the narrowest error on it, so that sums over points are as good as integrals. */
export const STEP_LN = 0.008;
/** Alike sets of a day count as no more than this many: what one of them hides, the others hide too. */
export const MOST_ALIKE = 3;
/** Parts of the distribution below this share of its peak are let go. */
const NEGLIGIBLE = 1e-8;

/** Probabilities on grid points `first`, `first + 1` ... (any number); a point p stands for the ln strength `p STEP_LN`. */
export interface Lattice {
  first: number;
  weights: Float64Array;
}

/** What one set of parameters makes of all sessions. */
export interface GridResult {
  lnEvidence: number;
  /** Strength after the last session, normed to 1. */
  last: Lattice;
  /** After each session, and how likely each strength made that session: kept only when asked for. */
  filtered: Lattice[];
  likelihoods: Lattice[];
}

/**
 * The exact filter of ln strength on a grid, for given parameters: it drifts between sessions, each session's own
 * form stands beside it, and every set of the session multiplies its likelihood in. Nothing is taken to be normal.
 */
export function gridFilter(
  sessions: readonly Session[],
  lift: LiftModel,
  strength: { meanLn: number; sdLn: number },
  parameters: Parameters,
  keep: boolean,
): GridResult {
  const daySd = DAY_SD * Math.exp(parameters.lnDaySd);
  const dayForm = dayFormKernel(daySd);
  const form = dayForm.weights;
  const read = readerOf(parameters, lift);
  let state = priorLattice(strength);
  let lnEvidence = 0;
  let lastDay = sessions[0]?.day ?? 0;
  const filtered: Lattice[] = [];
  const likelihoods: Lattice[] = [];
  for (const session of sessions) {
    state = drift(state, (session.day - lastDay) / 7, parameters);
    lastDay = session.day;
    const likelihood = sessionLikelihood(
      session,
      read,
      parameters,
      state.first + dayForm.first,
      state.weights.length + dayForm.weights.length - 1,
    );
    const { first, weights } = state;
    const { values, lnScale } = likelihood;
    const count = weights.length;
    const smooth = keep ? new Float64Array(count) : null;
    const product = new Float64Array(count);
    let sum = 0;
    for (let i = 0; i < count; i++) {
      let mean = 0;
      for (let k = 0; k < form.length; k++) mean += form[k]! * values[i + k]!;
      if (smooth !== null) smooth[i] = mean;
      const weight = weights[i]! * mean;
      product[i] = weight;
      sum += weight;
    }
    lnEvidence += Math.log(sum) + lnScale;
    state = trim({ first, weights: product }, sum);
    if (smooth !== null) {
      filtered.push(state);
      likelihoods.push({ first, weights: smooth });
    }
  }
  return { lnEvidence, last: state, filtered, likelihoods };
}

/** Strength `weeks` later. */
export function drift(state: Lattice, weeks: number, parameters: Parameters): Lattice {
  if (!(weeks > 0)) return state;
  return convolve(state, driftKernel(weeks, parameters));
}

/** Strength at every session given all of them: the pass back over what `gridFilter` kept. */
export function smoothed(
  sessions: readonly Session[],
  { filtered, likelihoods }: GridResult,
  parameters: Parameters,
): Lattice[] {
  const result: Lattice[] = [...filtered];
  let ahead: Lattice | null = null;
  for (let j = filtered.length - 1; j >= 0; j--) {
    const here = filtered[j]!;
    if (ahead !== null) {
      const weeks = (sessions[j + 1]!.day - sessions[j]!.day) / 7;
      const kernel = driftKernel(weeks, parameters);
      ahead = correlate(ahead, kernel, here.first, here.weights.length);
      const product = Float64Array.from(here.weights, (weight, i) => weight * ahead!.weights[i]!);
      const sum = product.reduce((total, weight) => total + weight, 0);
      result[j] = { first: here.first, weights: product.map((weight) => weight / sum) };
    }
    const told: Lattice = likelihoods[j]!;
    const later: Lattice | null = ahead;
    const both: Float64Array = Float64Array.from(told.weights, (weight, i) => {
      if (later === null) return weight;
      return weight * (later.weights[Math.round(i + told.first - later.first)] ?? 0);
    });
    const peak = both.reduce((most, weight) => Math.max(most, weight), 0);
    ahead = { first: told.first, weights: both.map((weight) => weight / peak) };
  }
  return result;
}

/** One buffer for the likelihoods of all sessions in turn: a new one for each would be most of the work. */
let buffer = new Float64Array(1024);
function scratch(count: number): Float64Array {
  if (buffer.length < count) buffer = new Float64Array(2 * count);
  return buffer.subarray(0, count);
}

/** Likelihood of all sets of a session over the day's strength, scaled by its own factor. */
function sessionLikelihood(
  session: Session,
  read: (model: SetModel) => ReadModel,
  parameters: Parameters,
  first: number,
  count: number,
): { values: Float64Array; lnScale: number } {
  const values = scratch(count).fill(1);
  let lnScale = 0;
  for (const group of session.groups) {
    const reading = read(group.model);
    const offset =
      reading.straightLn +
      group.carriedLn * Math.exp(parameters.lnTiring) -
      (group.equipment === null ? 0 : parameters[group.equipment]) -
      (group.platform ? parameters.platform : 0);
    lnScale += multiplyIn(values, first, offset, group, reading.table);
  }
  return { values, lnScale };
}

/** Multiplies one group's likelihood in; returns the ln of what does not depend on strength. */
function multiplyIn(
  values: Float64Array,
  first: number,
  offset: number,
  group: EffortGroup,
  { speedMps, peakMps, lossLn, ladder, lastMps }: ReadTable,
): number {
  const count = values.length;
  let lnScale = 0;
  if (group.made > 0 || group.missed) {
    const enough = group.made > 0 ? offset + neededSurplus(lossLn, group.made) : Number.NEGATIVE_INFINITY;
    const more = group.missed ? offset + neededSurplus(lossLn, group.made + 1) : Number.POSITIVE_INFINITY;
    const times = Math.min(group.count, MOST_ALIKE);
    for (let i = 0; i < count; i++) {
      const ln = (first + i) * STEP_LN;
      const one = chanceOf(ln - enough, ln - more);
      values[i]! *= times === 1 ? one : one ** times;
    }
  }
  const speed = (told: EffortGroup['fastestMps'], factor: number, table: Float64Array) => {
    if (told.count === 0) return;
    const sd = factor * Math.sqrt(SPEED_SD_MPS ** 2 / told.count + SHARED_SPEED_SD_MPS ** 2);
    lnScale -= Math.log(sd);
    for (let i = 0; i < count; i++) {
      const z = (told.mean - atSurplus(table, (first + i) * STEP_LN - offset)) / sd;
      values[i]! *= tailed(z);
    }
  };
  speed(group.fastestMps, 1, speedMps);
  speed(group.peakMps, PEAK_FACTOR, peakMps);
  if (group.lastMps.count > 0) {
    speed(group.lastMps, LAST_FACTOR, lastMps(group.made));
  }
  if (group.reserve.count > 0) {
    const reps = ladder();
    const said = group.made + group.reserve.mean + RESERVE_UNSAID_REPS;
    for (let i = 0; i < count; i++) {
      const possible = repsPossible(reps, (first + i) * STEP_LN - offset);
      const sd = reserveSd(possible - group.made, group.reserve.count);
      values[i]! *= tailed((said - possible) / sd) / sd;
    }
  }
  if (group.stopped.count > 0) {
    const at = offset + neededSurplus(lossLn, group.made + 1);
    for (let i = 0; i < count; i++) {
      const shortfall = at - (first + i) * STEP_LN;
      values[i]! *= tailed((group.stopped.mean - stopAt(group.model, shortfall)) / STOP_SD_S);
    }
  }
  return lnScale;
}

/** Student's density with TAIL = 4 degrees of freedom, but for a constant factor: (1 + z^2/4)^(-5/2). */
function tailed(z: number): number {
  const q = 1 / (1 + (z * z) / TAIL);
  return q * q * Math.sqrt(q);
}

/**
 * Chance that just these reps go with ln strength `enough` above what they need and `more` above what one rep more
 * needs (infinite where none was asked); slips and wild entries included.
 */
function chanceOf(enough: number, more: number): number {
  const usual = phi(enough / SET_SD_LN) - phi(more / SET_SD_LN);
  const slipped = phi(enough / SLIP_SD_LN) - phi(more / SLIP_SD_LN);
  return (1 - SLIP_SHARE - WILD_SHARE) * usual + SLIP_SHARE * slipped + WILD_SHARE / 2;
}

/** The normal distribution function read from a table, to 1e-6. */
function phi(z: number): number {
  if (z <= -PHI_SPAN) return 0;
  if (z >= PHI_SPAN) return 1;
  const x = (z + PHI_SPAN) * PHI_PER_UNIT;
  const i = Math.floor(x);
  return PHI[i]! + (x - i) * (PHI[i + 1]! - PHI[i]!);
}
const PHI_SPAN = 8;
const PHI_PER_UNIT = 128;
const PHI = Float64Array.from({ length: 2 * PHI_SPAN * PHI_PER_UNIT + 2 }, (_, i) =>
  normalCdf(i / PHI_PER_UNIT - PHI_SPAN),
);

const priors = new WeakMap<object, Lattice>();

function priorLattice(strength: { meanLn: number; sdLn: number }): Lattice {
  const lattice = priors.get(strength) ?? normalLattice(strength);
  priors.set(strength, lattice);
  return lattice;
}

function normalLattice({ meanLn, sdLn }: { meanLn: number; sdLn: number }): Lattice {
  const reach = Math.ceil((4.5 * sdLn) / STEP_LN);
  const first = Math.round(meanLn / STEP_LN) - reach;
  const weights = Float64Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-0.5 * (((first + i) * STEP_LN - meanLn) / sdLn) ** 2),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return { first, weights: weights.map((weight) => weight / sum) };
}

/** The day's own form about the average: mostly near, at times a day that went wrong. */
function dayFormKernel(sd: number): Lattice {
  const down = Math.ceil(((BAD_DAY_BELOW + 3 * BAD_DAY_FACTOR) * sd) / STEP_LN);
  const up = Math.ceil((Math.max(3.5, 3 * BAD_DAY_FACTOR - BAD_DAY_BELOW) * sd) / STEP_LN);
  const weights = Float64Array.from({ length: down + up + 1 }, (_, i) => {
    const z = ((i - down) * STEP_LN) / sd;
    const bad = (z + BAD_DAY_BELOW) / BAD_DAY_FACTOR;
    return (
      (1 - BAD_DAY_SHARE) * Math.exp(-0.5 * z * z) +
      (BAD_DAY_SHARE / BAD_DAY_FACTOR) * Math.exp(-0.5 * bad * bad)
    );
  });
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return { first: -down, weights: weights.map((weight) => weight / sum) };
}

/**
 * A step on the grid. Its mean moves the points themselves; its spread is sampled where it is wide and has three points
 * of the same variance where it is narrow.
 */
export function driftKernel(weeks: number, { weekGain, lnWeekSd }: Parameters): Lattice {
  const moved = (weeks * weekGain) / STEP_LN;
  const spread = (WEEK_SD * Math.exp(lnWeekSd) * Math.sqrt(weeks)) / STEP_LN;
  if (spread < 0.8) {
    const square = spread * spread;
    return { first: moved - 1, weights: Float64Array.of(square / 2, 1 - square, square / 2) };
  }
  const radius = Math.ceil(4 * spread);
  const weights = Float64Array.from({ length: 2 * radius + 1 }, (_, i) =>
    Math.exp(-0.5 * ((i - radius) / spread) ** 2),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return { first: moved - radius, weights: weights.map((weight) => weight / sum) };
}

function convolve({ first, weights }: Lattice, { first: kernelFirst, weights: kernel }: Lattice): Lattice {
  const result = new Float64Array(weights.length + kernel.length - 1);
  for (let i = 0; i < weights.length; i++) {
    const weight = weights[i]!;
    for (let k = 0; k < kernel.length; k++) result[i + k]! += weight * kernel[k]!;
  }
  return { first: first + kernelFirst, weights: result };
}

/** For each point of [first, first + count): the mean of `ahead` over where a step leads from there. */
function correlate(ahead: Lattice, kernel: Lattice, first: number, count: number): Lattice {
  const weights = Float64Array.from({ length: count }, (_, i) => {
    let sum = 0;
    const from = Math.round(first + i + kernel.first - ahead.first);
    for (let k = 0; k < kernel.weights.length; k++)
      sum += kernel.weights[k]! * (ahead.weights[from + k] ?? 0);
    return sum;
  });
  return { first, weights };
}

/** Normed to 1, without its negligible ends. */
function trim({ first, weights }: Lattice, sum: number): Lattice {
  let peak = 0;
  for (const weight of weights) peak = Math.max(peak, weight);
  const least = NEGLIGIBLE * peak;
  let low = 0;
  let high = weights.length;
  while (low < high - 1 && weights[low]! < least) low++;
  while (high > low + 1 && weights[high - 1]! < least) high--;
  const kept = weights.slice(low, high);
  for (let i = 0; i < kept.length; i++) kept[i]! /= sum;
  return { first: first + low, weights: kept };
}
