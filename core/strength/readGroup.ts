import type { Tiring } from '../effort/Tiring.ts';
import type { PopulationShape } from '../lifter/populationShape.ts';
import type { Parameters } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { type ShapeReading, shapeReader } from './readShape.ts';
import { type ResponseTable, ROOT_STEP, ROOTS, SHORTFALLS } from './response.ts';
import type { MassMixture, Motion, SetModel } from './setModel.ts';

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

/**
 * Reads set models for one set of parameters; each motion is read once, however many masses share it. `readShape` may be
 * that of other parameters with the same shape.
 */
export function readerOf(
  parameters: Parameters,
  lift: LiftModel,
  readShape = shapeReader(parameters, lift.shape),
): (model: SetModel) => ReadModel {
  const straightLn = straightLnOf(parameters, lift, readShape);
  const models = new Map<SetModel, ReadModel>();
  const tables = new Map<Motion, ReadTable>();
  return (model) => {
    const known = models.get(model);
    if (known !== undefined) return known;
    const { motion, start } = model;
    let table = tables.get(motion);
    if (table === undefined) {
      table = readTable(motion, (one) => readShape(one, start), parameters, lift);
      tables.set(motion, table);
    }
    const reading: ReadModel = { table, straightLn: straightLn(model) };
    models.set(model, reading);
    return reading;
  };
}

/** ln of the straight total mass that stands for a total mass in a rigging, for one set of parameters. */
export function straightLnOf(
  { bandError, startError }: Parameters,
  { reference }: LiftModel,
  readShape: ReturnType<typeof shapeReader>,
): (at: Pick<SetModel, 'start' | 'lnTotal' | 'limit'>) => number {
  // What bands and another start add beyond the model, by this lifter's own log, comes to its limits.
  const lnLimit = ({ tables, weights }: MassMixture, start: Rigging['start']) =>
    tables.reduce(
      (sum, table, i) => sum + weights[i]! * (readShape(table, start).lnLimit + bandError * table.bandShare),
      start === reference.start ? 0 : startError,
    );
  const fromLn = lnLimit(reference.limit, reference.start);
  return ({ start, lnTotal, limit }) => lnTotal + lnLimit(limit, start) - fromLn;
}

function readTable(
  { tables, weights, peakRatio }: Motion,
  readShape: (table: ResponseTable) => ShapeReading,
  { lnTiring, speedOffset, speedSlope }: Parameters,
  { tiring }: LiftModel,
): ReadTable {
  const perSecond = tiring.perSecond * Math.exp(lnTiring);
  const meanMps = new Float64Array(ROOTS);
  const lossLn = new Float64Array(ROOTS);
  for (let i = 0; i < tables.length; i++) {
    const { speedMps, effortS } = readShape(tables[i]!);
    const weight = weights[i]!;
    for (let j = 0; j < ROOTS; j++) {
      meanMps[j]! += weight * speedMps[j]!;
      lossLn[j]! += perSecond * weight * effortS[j]!;
    }
  }
  for (let j = 0; j < ROOTS; j++) {
    meanMps[j] = Math.max(SLOWEST_MPS, meanMps[j]! + speedOffset + speedSlope * (j * ROOT_STEP) ** 2);
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
  const { stopS } = model.motion;
  if (shortfall <= SHORTFALLS[0]) return stopS[0]!;
  for (let i = 1; i < SHORTFALLS.length; i++) {
    const high = SHORTFALLS[i]!;
    const low = SHORTFALLS[i - 1]!;
    if (shortfall <= high)
      return stopS[i - 1]! + ((shortfall - low) / (high - low)) * (stopS[i]! - stopS[i - 1]!);
  }
  return stopS[stopS.length - 1]!;
}
