import { ownRoom, type Room } from '../numeric/room.ts';
import { changeOver, FURTHER_FALL_LN, LEAST_FALL_LN } from './change.ts';
import type { Parameters } from './parameters.ts';

/** Distance of grid points in ln strength: below the narrowest error on it, so that sums over points are as good as integrals. */
export const STEP_LN = 0.01;
/** Parts of the distribution below this share of its peak are let go. */
const NEGLIGIBLE = 1e-4;

/** Probabilities on grid points `first`, `first + 1` ... (any number); a point p stands for the ln strength `p STEP_LN`. */
export interface Lattice {
  first: number;
  weights: Float64Array;
}

/** Strength `weeks` later. */
export function drift(state: Lattice, weeks: number, parameters: Parameters): Lattice {
  return weeks > 0 ? convolve(state, driftKernel(weeks, parameters), ownRoom) : state;
}

/** The same for many steps. */
export function drifter(parameters: Parameters, room: Room): (state: Lattice, weeks: number) => Lattice {
  const kernelOf = driftKernels(parameters);
  return (state, weeks) => (weeks > 0 ? convolve(state, kernelOf(weeks), room) : state);
}

/** Steps on the grid, each worked out once: a log has few different gaps between its days. `fallShare`: of them are falls too. */
export function driftKernels(parameters: Parameters): (weeks: number, fallShare?: number) => Lattice {
  const known = new Map<number, Lattice>();
  return (weeks, fallShare = 0) => {
    let kernel = known.get(weeks);
    if (kernel === undefined) {
      kernel = driftKernel(weeks, parameters);
      known.set(weeks, kernel);
    }
    return fallShare > 0 ? withFall(kernel, fallShare, ownRoom) : kernel;
  };
}

/**
 * A step on the grid. Its mean moves the points themselves; its spread is sampled where it is wide and has three points
 * of the same variance where it is narrow.
 */
function driftKernel(weeks: number, parameters: Parameters): Lattice {
  const { meanLn, sdLn } = changeOver(weeks, parameters);
  const moved = meanLn / STEP_LN;
  const spread = sdLn / STEP_LN;
  if (spread < 0.8) {
    const square = spread * spread;
    return { first: moved - 1, weights: Float64Array.of(square / 2, 1 - square, square / 2) };
  }
  const radius = Math.ceil(4 * spread);
  return sampled(moved - radius, 2 * radius + 1, (i) => Math.exp(-0.5 * ((i - radius) / spread) ** 2));
}

/** What of a fall is left at each further step of the grid, and how far down falls are followed. */
const STILL_FALLING = Math.exp(-STEP_LN / FURTHER_FALL_LN);
const LEAST_STEPS = Math.round(LEAST_FALL_LN / STEP_LN);
const DEEPEST_STEPS = Math.round(0.3 / STEP_LN);

/** A share of what is believed falls by a step and exponentially distributed ones: one sweep from the top, since these add up as they go. */
export function withFall({ first, weights }: Lattice, share: number, room: Room): Lattice {
  const result = room(weights.length + DEEPEST_STEPS);
  let falling = 0;
  for (let i = result.length - 1; i >= 0; i--) {
    const stays = i >= DEEPEST_STEPS ? weights[i - DEEPEST_STEPS]! : 0;
    const from = i - DEEPEST_STEPS + LEAST_STEPS;
    const falls = from >= 0 && from < weights.length ? weights[from]! : 0;
    falling = STILL_FALLING * falling + (1 - STILL_FALLING) * falls;
    result[i] = (1 - share) * stays + share * falling;
  }
  return { first: first - DEEPEST_STEPS, weights: result };
}

/** A normal distribution on the grid. */
export function normalLattice(mean: number, sd: number): Lattice {
  const reach = Math.ceil((4.5 * sd) / STEP_LN);
  const first = Math.round(mean / STEP_LN) - reach;
  return sampled(first, 2 * reach + 1, (i) => Math.exp(-0.5 * (((first + i) * STEP_LN - mean) / sd) ** 2));
}

/** Any density at `count` points, normed to 1. */
export function sampled(first: number, count: number, density: (i: number) => number): Lattice {
  const weights = new Float64Array(count);
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const weight = density(i);
    weights[i] = weight;
    sum += weight;
  }
  for (let i = 0; i < count; i++) weights[i]! /= sum;
  return { first, weights };
}

/** Mean ln strength. */
export function meanLnOf({ first, weights }: Lattice): number {
  let sum = 0;
  let moment = 0;
  weights.forEach((weight, i) => {
    sum += weight;
    moment += weight * i;
  });
  return (first + moment / sum) * STEP_LN;
}

/** Normed to 1 where it stands, and without its negligible ends. */
export function trim({ first, weights }: Lattice, sum: number): Lattice {
  let peak = 0;
  for (let i = 0; i < weights.length; i++) if (weights[i]! > peak) peak = weights[i]!;
  const least = NEGLIGIBLE * peak;
  let low = 0;
  let high = weights.length;
  while (low < high - 1 && weights[low]! < least) low++;
  while (high > low + 1 && weights[high - 1]! < least) high--;
  for (let i = low; i < high; i++) weights[i]! /= sum;
  return { first: first + low, weights: weights.subarray(low, high) };
}

/** The sum of two independent quantities. */
export function convolve(
  { first, weights }: Lattice,
  { first: kernelFirst, weights: kernel }: Lattice,
  room: Room,
): Lattice {
  const result = room(weights.length + kernel.length - 1).fill(0);
  for (let i = 0; i < weights.length; i++) {
    const weight = weights[i]!;
    for (let k = 0; k < kernel.length; k++) result[i + k]! += weight * kernel[k]!;
  }
  return { first: first + kernelFirst, weights: result };
}
