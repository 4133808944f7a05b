import { reboundShare } from '../lifter/lifterCapability.ts';
import type { PopulationShape } from '../lifter/populationShape.ts';
import { lagrange } from '../numeric/lagrange.ts';
import type { Parameters } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { shapeNodes } from './response.ts';

/** How much each of the tabulated shapes counts for one set of parameters, in the order of the tables. */
export function nodeWeights(
  parameters: Parameters,
  shape: PopulationShape,
  start: Rigging['start'],
): Float64Array {
  const nodes = shapeNodes(shape, start);
  const { slope, outerSlopes, outerRebounds } = nodes;
  const rebound = reboundOf(parameters, shape, start);
  const [low, , high] = lagrange(nodes.lnMaxSpeed, [0, 1, 2], parameters.lnMaxSpeed);
  const bySlope = lagrange(slope, outerSlopes, parameters.slope);
  const byRebound = lagrange(nodes.rebound, outerRebounds, rebound);
  const reboundWeights = along(nodes.rebound, rebound);
  const weights = new Float64Array(
    slope.length * nodes.rebound.length + 2 * outerSlopes.length * outerRebounds.length,
  );
  let at = 0;
  // What the outer top speeds add is their difference from the middle at the same shapes.
  along(slope, parameters.slope).forEach((slopeWeight, j) => {
    const outer = (low! + high!) * bySlope[j]!;
    for (let k = 0; k < reboundWeights.length; k++)
      weights[at++] = slopeWeight * reboundWeights[k]! - outer * byRebound[k]!;
  });
  for (const share of [low!, high!])
    for (const j of outerSlopes)
      for (const k of outerRebounds) weights[at++] = share * bySlope[j]! * byRebound[k]!;
  return weights;
}

/** Rebound of a start for one lifter, as a share of force. */
export function reboundOf(parameters: Parameters, shape: PopulationShape, start: Rigging['start']): number {
  const share = reboundShare(start);
  const free = shape.rebound * Math.exp(parameters.lnRebound);
  return (free * share) / (share + (1 - share) * Math.exp(-parameters.heldRebound));
}

/**
 * Weights of the nodes at `x`: two parabolas, through the nodes beside it and one more on either side, blended from one
 * to the other (Overhauser 1968); at an end the one there is. Beyond the outer nodes for one step more, and then held.
 */
function along(nodes: readonly number[], x: number): number[] {
  const n = nodes.length;
  if (n === 1) return [1];
  const reach = nodes[1]! - nodes[0]!;
  const held = Math.min(Math.max(x, nodes[0]! - reach), nodes[n - 1]! + reach);
  let low = 0;
  while (low < n - 2 && held > nodes[low + 1]!) low++;
  const left = Math.max(0, low - 1);
  const right = Math.min(low, n - 3);
  const before = lagrange(nodes, [left, left + 1, left + 2], held);
  const after = lagrange(nodes, [right, right + 1, right + 2], held);
  const share = Math.min(Math.max((held - nodes[low]!) / (nodes[low + 1]! - nodes[low]!), 0), 1);
  return before.map((weight, i) => weight * (1 - share) + after[i]! * share);
}
