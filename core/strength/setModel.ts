import { reboundShare } from '../lifter/lifterCapability.ts';
import type { PopulationShape } from '../lifter/populationShape.ts';
import type { Parameters } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { type Response, type ResponseTable, shapeNodes } from './response.ts';

/** One rigging at one total mass: everything that a set there can tell, as a function of the parameters. */
export interface SetModel {
  start: Rigging['start'];
  lnTotal: number;
  /** ln(S_limit / (total mass x g)) for every shape, and the share of the mean load that bands carry. */
  lnLimit: Float64Array;
  bandShare: number;
  /** Speed, effort and place of a miss by surplus; the same object for masses that differ little. */
  table: ResponseTable;
}

/** As a function of the surplus reps hardly change with the mass: masses this near in ln share a table. */
const SHARED_LN = 0.05;

/** Reads a response at one total mass: a parabola through the three tables nearest to it, or all there are. */
export function setModel(response: Response, start: Rigging['start'], lnTotal: number): SetModel {
  const { lnTotals, tables } = response;
  const weights = massWeights(lnTotals, lnTotal);
  return {
    start,
    lnTotal,
    lnLimit: mixture(
      tables.map(({ lnLimit }) => lnLimit),
      weights,
    ),
    bandShare: tables.reduce((sum, { bandShare }, i) => sum + weights[i]! * bandShare, 0),
    table: tables.length === 1 ? tables[0]! : sharedTable(response, Math.round(lnTotal / SHARED_LN)),
  };
}

const shared = new WeakMap<Response, Map<number, ResponseTable>>();

function sharedTable(response: Response, step: number): ResponseTable {
  const byStep = shared.get(response) ?? new Map<number, ResponseTable>();
  shared.set(response, byStep);
  const table = byStep.get(step) ?? mixedTable(response, massWeights(response.lnTotals, step * SHARED_LN));
  byStep.set(step, table);
  return table;
}

function mixedTable({ tables }: Response, weights: readonly number[]): ResponseTable {
  const mix = (read: (table: ResponseTable) => Float64Array) => mixture(tables.map(read), weights);
  return {
    lnLimit: mix(({ lnLimit }) => lnLimit),
    speedMps: tables[0]!.speedMps.map((_, i) => mix(({ speedMps }) => speedMps[i]!)),
    effortS: tables[0]!.effortS.map((_, i) => mix(({ effortS }) => effortS[i]!)),
    peakRatio: mix(({ peakRatio }) => peakRatio),
    stopS: mix(({ stopS }) => stopS),
    bandShare: tables.reduce((sum, { bandShare }, i) => sum + weights[i]! * bandShare, 0),
  };
}

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
  const inner = products(along(slope, parameters.slope), along(nodes.rebound, rebound));
  const bySlope = lagrange(slope, outerSlopes, parameters.slope);
  const byRebound = lagrange(nodes.rebound, outerRebounds, rebound);
  // What the outer top speeds add is their difference from the middle at the same shapes.
  products(bySlope, byRebound).forEach((weight, at) => {
    inner[at]! -= (low! + high!) * weight;
  });
  const outer = products(
    outerSlopes.map((j) => bySlope[j]!),
    outerRebounds.map((k) => byRebound[k]!),
  );
  return Float64Array.from([...inner, ...outer.map((w) => low! * w), ...outer.map((w) => high! * w)]);
}

function products(slopes: readonly number[], rebounds: readonly number[]): number[] {
  return slopes.flatMap((slope) => rebounds.map((rebound) => slope * rebound));
}

/** Rebound of a start for one lifter, as a share of force. */
export function reboundOf(parameters: Parameters, shape: PopulationShape, start: Rigging['start']): number {
  const share = reboundShare(start);
  const free = shape.rebound * Math.exp(parameters.lnRebound);
  if (share === 0 || share === 1) return free * share;
  return free / (1 + ((1 - share) / share) * Math.exp(-parameters.heldRebound));
}

/**
 * Weights of the nodes at `x`: two parabolas, through the nodes beside it and one more on either side, blended from one
 * to the other (Overhauser 1968); at an end the one there is. Beyond the outer nodes for one step more, and then held; between and beyond two nodes straight.
 */
function along(nodes: readonly number[], x: number): number[] {
  const n = nodes.length;
  if (n === 1) return [1];
  if (n === 2) return lagrange(nodes, [0, 1], x);
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

/** Weights of the polynomial through the chosen nodes; nought for the others. */
function lagrange(nodes: readonly number[], chosen: readonly number[], x: number): number[] {
  return nodes.map((node, i) =>
    chosen.includes(i)
      ? chosen.reduce((w, j) => (i === j ? w : (w * (x - nodes[j]!)) / (node - nodes[j]!)), 1)
      : 0,
  );
}

function mixture(lists: readonly Float64Array[], weights: readonly number[]): Float64Array {
  const mixed = new Float64Array(lists[0]!.length);
  lists.forEach((list, i) => {
    const weight = weights[i]!;
    if (weight === 0) return;
    for (let j = 0; j < mixed.length; j++) mixed[j]! += weight * list[j]!;
  });
  return mixed;
}

/** Weights of a parabola through the three masses nearest to `lnTotal`, of all where there are fewer. */
export function massWeights(lnTotals: readonly number[], lnTotal: number): number[] {
  const nearest = lnTotals
    .map((_, i) => i)
    .sort((a, b) => Math.abs(lnTotals[a]! - lnTotal) - Math.abs(lnTotals[b]! - lnTotal))
    .slice(0, 3);
  return lagrange(lnTotals, nearest, lnTotal);
}
