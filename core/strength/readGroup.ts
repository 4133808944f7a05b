import { barPart } from '../effort/barPart.ts';
import { repCosts } from '../effort/repCost.ts';
import type { Tiring } from '../effort/Tiring.ts';
import type { PopulationShape } from '../lifter/populationShape.ts';
import type { LnKg } from '../numeric/quantity.ts';
import { cutRoom } from '../numeric/room.ts';
import { expectedMps } from '../rep/expectedSpeed.ts';
import type { Parameters } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { type ShapeReading, shapeReader } from './readShape.ts';
import { ReadTable } from './readTable.ts';
import { type ResponseTable, ROOT_STEP, ROOTS, type ShapesTold, STOP_ROOTS } from './response.ts';
import type { MassMixture, Motion, SetModel } from './setModel.ts';
import { speedCorrectionOf } from './speedCorrectionOf.ts';

/** What the estimate knows of the lift: shape, tiring, and the straight lift that strength is counted in. */
export interface LiftModel {
  shape: PopulationShape;
  tiring: Tiring;
  reference: SetModel;
  /** For which shapes tables are made. */
  told: ShapesTold;
}

/** A set model for one set of parameters. */
export interface ReadModel {
  /** ln of the straight total mass that stands for this set's bar. */
  straightLn: LnKg;
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
  const costOf = repCosts(parameters.tiringBend);
  const models = new Map<SetModel, ReadModel>();
  const tables = new Map<Motion, ReadTable>();
  return (model) => {
    const known = models.get(model);
    if (known !== undefined) return known;
    const { motion, start } = model;
    let table = tables.get(motion);
    if (table === undefined) {
      table = readTable(motion, (one) => readShape(one, start), parameters, costOf, lift);
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
): (at: Pick<SetModel, 'start' | 'lnTotal' | 'limit'>) => LnKg {
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
  { tables, weights, peakRatio, bodyShare }: Motion,
  readShape: (table: ResponseTable) => ShapeReading,
  parameters: Parameters,
  costOf: (rep: number) => number,
  { tiring }: LiftModel,
): ReadTable {
  const perSecond = tiring.perSecond * Math.exp(parameters.lnTiring);
  const correction = speedCorrectionOf(parameters);
  const meanMps = room(ROOTS);
  const lossLn = room(ROOTS);
  const stopS = room(STOP_ROOTS.length);
  for (let i = 0; i < tables.length; i++) {
    const { speedMps, effortS, stopS: stops } = readShape(tables[i]!);
    const weight = weights[i]!;
    for (let j = 0; j < ROOTS; j++) {
      meanMps[j]! += weight * speedMps[j]!;
      lossLn[j]! += perSecond * weight * effortS[j]!;
    }
    for (let j = 0; j < stopS.length; j++) stopS[j]! += weight * stops[j]!;
  }
  for (let j = 0; j < ROOTS; j++) {
    meanMps[j] = expectedMps(meanMps[j]!, (j * ROOT_STEP) ** 2, correction);
    lossLn[j] = barPart(bodyShare, (j * ROOT_STEP) ** 2) * Math.max(0, lossLn[j]!);
  }
  return new ReadTable(meanMps, lossLn, costOf, stopS, peakRatio);
}

const room = cutRoom();
