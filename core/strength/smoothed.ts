import type { GridResult } from './gridFilter.ts';
import { driftKernels, type Lattice } from './lattice.ts';
import type { Parameters } from './parameters.ts';
import type { Session } from './sessions.ts';

/** Strength at every session given all of them: the pass back over what `gridFilter` kept. */
export function smoothed(
  sessions: readonly Session[],
  { filtered, likelihoods, fallShares }: GridResult,
  parameters: Parameters,
): Lattice[] {
  const kernelOf = driftKernels(parameters);
  const newest = filtered.length - 1;
  const result = [...filtered];
  // How likely each strength made this session and all later ones, but for a constant.
  let onwards = likelihoods[newest]!;
  for (let j = newest - 1; j >= 0; j--) {
    const { first, weights } = filtered[j]!;
    const weeks = (sessions[j + 1]!.day - sessions[j]!.day) / 7;
    const later = meansAhead(onwards, kernelOf(weeks, fallShares[j + 1]), first, weights.length);
    const product = new Float64Array(weights.length);
    let sum = 0;
    for (let i = 0; i < product.length; i++) {
      product[i] = weights[i]! * later[i]!;
      sum += product[i]!;
    }
    for (let i = 0; i < product.length; i++) product[i]! /= sum;
    result[j] = { first, weights: product };
    onwards = { first, weights: productOf(likelihoods[j]!, first, later) };
  }
  return result;
}

/** For each point of [first, first + count): the mean of `ahead` over where a step leads from there. */
function meansAhead(ahead: Lattice, kernel: Lattice, first: number, count: number): Float64Array {
  const means = new Float64Array(count);
  const offset = Math.round(first + kernel.first - ahead.first);
  for (let i = 0; i < count; i++) {
    let sum = 0;
    for (let k = 0; k < kernel.weights.length; k++)
      sum += kernel.weights[k]! * (ahead.weights[offset + i + k] ?? 0);
    means[i] = sum;
  }
  return means;
}

/** How likely a session and all later ones were, from `first` on; the largest is 1. */
function productOf(session: Lattice, first: number, later: Float64Array): Float64Array {
  const offset = Math.round(first - session.first);
  const product = new Float64Array(later.length);
  let most = 0;
  for (let i = 0; i < product.length; i++) {
    product[i] = later[i]! * session.weights[offset + i]!;
    most = Math.max(most, product[i]!);
  }
  for (let i = 0; i < product.length; i++) product[i]! /= most;
  return product;
}
