import type { Tiring } from '../effort/Tiring.ts';
import type { PopulationShape } from '../lifter/populationShape.ts';
import type { Parameters } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { type Response, type ResponseTable, ROOT_STEP, ROOTS, SHORTFALLS } from './response.ts';
import { massWeights, nodeWeights, type SetModel } from './setModel.ts';

/** What the estimate knows of the lift: shape, tiring, and the straight lift that strength is counted in. */
export interface LiftModel {
  shape: PopulationShape;
  tiring: Tiring;
  reference: SetModel;
}

/** One table for one set of parameters: plain lists over the surplus of strength. */
export interface ReadTable {
  /** Mean and peak speed over the surplus. */
  speedMps: Float64Array;
  peakMps: Float64Array;
  /** ln strength lost by each rep, at the surplus of its start. */
  lossLn: Float64Array;
  /** What follows from these lists, worked out when first asked for. */
  needed: (wholeReps: number) => number;
  ladder: () => readonly number[];
  lastMps: (reps: number) => Float64Array;
}

/** A set model for one set of parameters. */
export interface ReadModel {
  /** ln of the straight total mass that stands for this set's bar. */
  straightLn: number;
  table: ReadTable;
}

/** Reads set models for one set of parameters; each table is read once, however many masses share it. */
export function readerOf(parameters: Parameters, lift: LiftModel): (model: SetModel) => ReadModel {
  const byStart = new Map<Rigging['start'], Float64Array>();
  const nodesAt = (start: Rigging['start']) => {
    const found = byStart.get(start) ?? nodeWeights(parameters, lift.shape, start);
    byStart.set(start, found);
    return found;
  };
  const { reference } = lift;
  const fromLn = at(reference.lnLimit, nodesAt(reference.start));
  const models = new Map<SetModel, ReadModel>();
  const tables = new Map<ResponseTable, ReadTable>();
  return (model) => {
    const known = models.get(model);
    if (known !== undefined) return known;
    const { table, lnLimit, bandShare, lnTotal, start } = model;
    const here = nodesAt(start);
    let shared = tables.get(table);
    if (shared === undefined) {
      shared = readTable(table, here, parameters, lift);
      tables.set(table, shared);
    }
    const reading: ReadModel = {
      table: shared,
      straightLn:
        lnTotal + at(lnLimit, here) - fromLn + errorLn(parameters, bandShare, start, reference.start),
    };
    models.set(model, reading);
    return reading;
  };
}

/** ln of the straight total mass that stands for a total mass in a rigging, for one set of parameters. */
export function straightLnOf(
  { lnTotals, tables }: Response,
  start: Rigging['start'],
  parameters: Parameters,
  { shape, reference }: LiftModel,
): (lnTotal: number) => number {
  const nodes = nodeWeights(parameters, shape, start);
  const fromLn = at(reference.lnLimit, nodeWeights(parameters, shape, reference.start));
  const values = tables.map(
    (table) =>
      at(table.lnLimit, nodes) - fromLn + errorLn(parameters, table.bandShare, start, reference.start),
  );
  return (lnTotal) => {
    const weights = massWeights(lnTotals, lnTotal);
    return values.reduce((sum, value, i) => sum + weights[i]! * value, lnTotal);
  };
}

/** What bands and start add to a set beyond the model, by this lifter's own log. */
function errorLn(
  { bandError, startError }: Parameters,
  bandShare: number,
  start: Rigging['start'],
  referenceStart: Rigging['start'],
): number {
  return bandError * bandShare + (start === referenceStart ? 0 : startError);
}

function readTable(
  { speedMps, effortS, peakRatio }: ResponseTable,
  nodes: Float64Array,
  { lnTiring, speedOffset, speedSlope }: Parameters,
  { tiring }: LiftModel,
): ReadTable {
  const perSecond = tiring.perSecond * Math.exp(lnTiring);
  const meanMps = Float64Array.from(
    { length: ROOTS },
    (_, j) => speedOffset + speedSlope * (j * ROOT_STEP) ** 2,
  );
  const lossLn = new Float64Array(ROOTS);
  for (let i = 0; i < nodes.length; i++) {
    const weight = nodes[i]!;
    if (weight === 0) continue;
    const speeds = speedMps[i]!;
    const efforts = effortS[i]!;
    for (let j = 0; j < ROOTS; j++) {
      meanMps[j]! += weight * speeds[j]!;
      lossLn[j]! += perSecond * weight * efforts[j]!;
    }
  }
  for (let j = 0; j < ROOTS; j++) {
    meanMps[j] = Math.max(SLOWEST_MPS, meanMps[j]!);
    lossLn[j] = Math.max(0, lossLn[j]!);
  }
  const needed = [0];
  let ladder: readonly number[] | undefined;
  const lasts = new Map<number, Float64Array>();
  return {
    speedMps: meanMps,
    peakMps: meanMps.map((mps, j) => mps * peakRatio[j]!),
    lossLn,
    needed(wholeReps) {
      while (needed.length < wholeReps) needed.push(before(lossLn, needed[needed.length - 1]!));
      return needed[wholeReps - 1]!;
    },
    ladder: () => (ladder ??= repLadder(lossLn)),
    lastMps(reps) {
      let found = lasts.get(reps);
      if (found === undefined) {
        found = lastRepSpeeds(meanMps, lossLn, reps);
        lasts.set(reps, found);
      }
      return found;
    },
  };
}

/** Speed of the last of `reps` reps over the surplus before the first. */
function lastRepSpeeds(speedMps: Float64Array, lossLn: Float64Array, reps: number): Float64Array {
  return Float64Array.from({ length: ROOTS }, (_, j) =>
    atSurplus(speedMps, surplusAtRep(lossLn, (j * ROOT_STEP) ** 2, reps)),
  );
}

const SLOWEST_MPS = 0.01;

function at(lnLimit: Float64Array, nodes: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) sum += nodes[i]! * lnLimit[i]!;
  return sum;
}

/** A tabulated quantity at a surplus: straight between the roots, constant outside. */
export function atSurplus(values: Float64Array, surplus: number): number {
  if (!(surplus > 0)) return values[0]!;
  const x = Math.sqrt(surplus) / ROOT_STEP;
  const j = Math.floor(x);
  if (j >= ROOTS - 1) return values[ROOTS - 1]!;
  const low = values[j]!;
  return low + (x - j) * (values[j + 1]! - low);
}

/** Surplus with which just `reps` reps are made (any number from 1, between whole ones straight). */
export function neededFor({ needed }: ReadTable, reps: number): number {
  const whole = Math.floor(reps);
  const low = needed(whole);
  return whole === reps ? low : low + (reps - whole) * (needed(whole + 1) - low);
}

/** Most reps that are counted. */
const MOST_REPS = 40;

/** Surpluses with which just 1, 2, 3 ... reps are made, as far as the tables go. */
function repLadder(lossLn: Float64Array): number[] {
  const ladder = [0];
  const farthest = ((ROOTS - 1) * ROOT_STEP) ** 2;
  while (ladder.length < MOST_REPS && ladder[ladder.length - 1]! < farthest)
    ladder.push(before(lossLn, ladder[ladder.length - 1]!));
  return ladder;
}

/** How many reps a surplus is good for, between whole ones straight: the middle of what counts as n reps is n. */
export function repsPossible(ladder: readonly number[], surplus: number): number {
  if (surplus <= 0) return 0.5 + surplus / (ladder[1]! - ladder[0]!);
  let n = 1;
  while (n < ladder.length - 1 && ladder[n]! < surplus) n++;
  const low = ladder[n - 1]!;
  return Math.min(MOST_REPS, n + (surplus - low) / (ladder[n]! - low) - 0.5);
}

/** The surplus before a rep after which `after` is left. */
function before(lossLn: Float64Array, after: number): number {
  let surplus = after + atSurplus(lossLn, after);
  for (let i = 0; i < 3; i++) surplus = after + atSurplus(lossLn, surplus);
  return surplus;
}

/** The surplus that is left at the start of rep `rep` (from 1). */
export function surplusAtRep(lossLn: Float64Array, surplus: number, rep: number): number {
  let left = surplus;
  for (let k = 1; k < rep; k++) left -= atSurplus(lossLn, left);
  return left;
}

/** Where a miss stops, by how much strength it lacked. */
export function stopAt(model: SetModel, shortfall: number): number {
  const { stopS } = model.table;
  if (shortfall <= SHORTFALLS[0]) return stopS[0]!;
  for (let i = 1; i < SHORTFALLS.length; i++) {
    const high = SHORTFALLS[i]!;
    const low = SHORTFALLS[i - 1]!;
    if (shortfall <= high)
      return stopS[i - 1]! + ((shortfall - low) / (high - low)) * (stopS[i]! - stopS[i - 1]!);
  }
  return stopS[stopS.length - 1]!;
}
