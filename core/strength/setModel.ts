import { reboundShare } from '../lifter/lifterCapability.ts';
import type { PopulationShape } from '../lifter/populationShape.ts';
import type { Parameters } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { type Response, type ResponseTable, ROOTS, reboundNodes, SHAPE_STEPS } from './response.ts';

/** Value and slope and bend in each of the three shape coordinates. */
interface Bent {
  value: number;
  slope: [number, number, number];
  bend: [number, number, number];
}

/** One rigging at one total mass: everything that a set there can tell, as a function of the parameters. */
export interface SetModel {
  start: Rigging['start'];
  lnTotal: number;
  bandShare: number;
  lnLimit: Bent;
  speedMps: Bent[];
  /** Peak over mean speed, effort, and the place of a miss, at the population's shape. */
  peakRatio: Float64Array;
  effortS: Float64Array;
  stopS: Float64Array;
  /** Middle of the rebound coordinate. */
  reboundMiddle: number;
}

/** Beyond this many table steps a quadratic is no longer trusted: the coordinate is held there. */
const FARTHEST = 2;

/** Reads a response at one total mass: a parabola through the three tables nearest to it, or all there are. */
export function setModel(
  response: Response,
  shape: PopulationShape,
  start: Rigging['start'],
  lnTotal: number,
): SetModel {
  const { nearest, weights } = interpolation(response.lnTotals, lnTotal);
  const tables = nearest.map((i) => response.tables[i]!);
  const mix = (read: (table: ResponseTable) => number) =>
    tables.reduce((sum, table, i) => sum + weights[i]! * read(table), 0);
  const nodes = reboundNodes(shape, start);
  const list = (read: (table: ResponseTable, j: number) => number) =>
    Float64Array.from({ length: ROOTS }, (_, j) => mix((table) => read(table, j)));
  return {
    start,
    lnTotal,
    bandShare: mix((table) => table.bandShare),
    lnLimit: bent(nodes, (i) => mix((table) => table.lnLimit[i]!)),
    speedMps: Array.from({ length: ROOTS }, (_, j) =>
      bent(nodes, (i) => mix((table) => table.speedMps[i]![j]!)),
    ),
    peakRatio: list((table, j) => {
      const meanMps = table.speedMps[0]![j]!;
      return meanMps > 0 ? table.peakMps[j]! / meanMps : 1;
    }),
    effortS: list((table, j) => table.effortS[j]!),
    stopS: Float64Array.from(tables[0]!.stopS, (_, j) => mix((table) => table.stopS[j]!)),
    reboundMiddle: nodes[1],
  };
}

/** The three coordinates of a parameter set in which tables bend: ln top speed, slope, rebound as a share of force. */
export function shapeCoordinates(
  parameters: Parameters,
  shape: PopulationShape,
  start: Rigging['start'],
): [number, number, number] {
  const [, middle] = reboundNodes(shape, start);
  const rebound = reboundOf(parameters, shape, start);
  return [parameters.lnMaxSpeed, parameters.slope, rebound - middle];
}

/** Rebound of a start for one lifter, as a share of force. */
export function reboundOf(parameters: Parameters, shape: PopulationShape, start: Rigging['start']): number {
  const share = reboundShare(start);
  const free = shape.rebound * Math.exp(parameters.lnRebound);
  if (share === 0 || share === 1) return free * share;
  return free / (1 + ((1 - share) / share) * Math.exp(-parameters.heldRebound));
}

export function evaluate(
  { value, slope, bend }: Bent,
  x: readonly number[],
  limits: readonly number[],
): number {
  let sum = value;
  for (let p = 0; p < 3; p++) {
    const limit = limits[p]!;
    const at = Math.min(Math.max(x[p]!, -limit), limit);
    sum += at * (slope[p]! + at * bend[p]!);
  }
  return sum;
}

/** How far the three coordinates may go from the middle. */
export function coordinateLimits(shape: PopulationShape): [number, number, number] {
  return [FARTHEST * SHAPE_STEPS[0], FARTHEST * SHAPE_STEPS[1], FARTHEST * shape.rebound + 1e-9];
}

function bent(nodes: readonly [number, number, number], value: (i: number) => number): Bent {
  const middle = value(0);
  const parts = [0, 1, 2].map((p) => {
    const low = p < 2 ? -SHAPE_STEPS[p]! : nodes[0] - nodes[1];
    const high = p < 2 ? SHAPE_STEPS[p]! : nodes[2] - nodes[1];
    return parabola(low, value(1 + 2 * p) - middle, high, value(2 + 2 * p) - middle);
  });
  return {
    value: middle,
    slope: [parts[0]!.slope, parts[1]!.slope, parts[2]!.slope],
    bend: [parts[0]!.bend, parts[1]!.bend, parts[2]!.bend],
  };
}

/** `slope x + bend x^2` through two points beside the origin. */
function parabola(lowX: number, lowY: number, highX: number, highY: number): { slope: number; bend: number } {
  if (lowX === highX) return { slope: 0, bend: 0 };
  const bend = (highY / highX - lowY / lowX) / (highX - lowX);
  return { slope: highY / highX - bend * highX, bend };
}

/** Weights of a parabola through the three nodes nearest to `x` (Lagrange), fewer where there are fewer. */
function interpolation(nodes: readonly number[], x: number): { nearest: number[]; weights: number[] } {
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
