import { reboundShare } from '../lifter/lifterCapability.ts';
import type { PopulationShape } from '../lifter/populationShape.ts';
import type { Parameters } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { type Response, type ResponseTable, shapeNodes } from './response.ts';

/** One rigging at one total mass: everything that a set there can tell, as a function of the parameters. */
export interface SetModel {
  start: Rigging['start'];
  lnTotal: number;
  /** The same object for all masses where nothing but mass is on the bar. */
  table: ResponseTable;
}

/** Reads a response at one total mass: a parabola through the three tables nearest to it, or all there are. */
export function setModel(response: Response, start: Rigging['start'], lnTotal: number): SetModel {
  const { lnTotals, tables } = response;
  if (tables.length === 1) return { start, lnTotal, table: tables[0]! };
  const { nearest, weights } = massWeights(lnTotals, lnTotal);
  const near = nearest.map((i) => tables[i]!);
  const mix = (read: (table: ResponseTable) => Float64Array) => mixture(near.map(read), weights);
  const table: ResponseTable = {
    lnLimit: mix(({ lnLimit }) => lnLimit),
    speedMps: near[0]!.speedMps.map((_, i) => mix(({ speedMps }) => speedMps[i]!)),
    effortS: near[0]!.effortS.map((_, i) => mix(({ effortS }) => effortS[i]!)),
    peakRatio: mix(({ peakRatio }) => peakRatio),
    stopS: mix(({ stopS }) => stopS),
    bandShare: near.reduce((sum, { bandShare }, i) => sum + weights[i]! * bandShare, 0),
  };
  return { start, lnTotal, table };
}

/** Nodes of the grid of shapes about one set of parameters, and how much each of them counts. */
export interface Corners {
  indices: number[];
  weights: number[];
}

/** Straight in each of the three coordinates; beyond the outer nodes for one step more, and then held. */
export function cornersOf(parameters: Parameters, shape: PopulationShape, start: Rigging['start']): Corners {
  const nodes = shapeNodes(shape, start);
  const along = [
    place(nodes.lnMaxSpeed, parameters.lnMaxSpeed),
    place(nodes.slope, parameters.slope),
    place(nodes.rebound, reboundOf(parameters, shape, start)),
  ];
  let corners: Corners = { indices: [0], weights: [1] };
  [nodes.lnMaxSpeed, nodes.slope, nodes.rebound].forEach(({ length }, axis) => {
    const { low, share } = along[axis]!;
    const next: Corners = { indices: [], weights: [] };
    corners.indices.forEach((index, i) => {
      next.indices.push(index * length + low);
      next.weights.push(corners.weights[i]! * (1 - share));
      if (length === 1) return;
      next.indices.push(index * length + low + 1);
      next.weights.push(corners.weights[i]! * share);
    });
    corners = next;
  });
  return corners;
}

/** Rebound of a start for one lifter, as a share of force. */
export function reboundOf(parameters: Parameters, shape: PopulationShape, start: Rigging['start']): number {
  const share = reboundShare(start);
  const free = shape.rebound * Math.exp(parameters.lnRebound);
  if (share === 0 || share === 1) return free * share;
  return free / (1 + ((1 - share) / share) * Math.exp(-parameters.heldRebound));
}

function place(nodes: readonly number[], x: number): { low: number; share: number } {
  if (nodes.length === 1) return { low: 0, share: 0 };
  let low = 0;
  while (low < nodes.length - 2 && x > nodes[low + 1]!) low++;
  const share = (x - nodes[low]!) / (nodes[low + 1]! - nodes[low]!);
  return { low, share: Math.min(Math.max(share, -1), 2) };
}

function mixture(lists: readonly Float64Array[], weights: readonly number[]): Float64Array {
  return Float64Array.from(lists[0]!, (_, j) =>
    lists.reduce((sum, list, i) => sum + weights[i]! * list[j]!, 0),
  );
}

/** Weights of a parabola through the three nodes nearest to `x` (Lagrange), fewer where there are fewer. */
export function massWeights(nodes: readonly number[], x: number): { nearest: number[]; weights: number[] } {
  const nearest = nodes
    .map((_, i) => i)
    .sort((a, b) => Math.abs(nodes[a]! - x) - Math.abs(nodes[b]! - x))
    .slice(0, 3);
  const weights = nearest.map((i) =>
    nearest.reduce(
      (product, j) => (i === j ? product : (product * (x - nodes[j]!)) / (nodes[i]! - nodes[j]!)),
      1,
    ),
  );
  return { nearest, weights };
}
