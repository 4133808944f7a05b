import type { Rigging } from './Rigging.ts';
import type { LiftModel } from './readGroup.ts';
import { type Response, tabulateResponse } from './response.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { type SetModel, setModel } from './setModel.ts';

/** Tables of one rigging for the masses that were on it; null where no strength explains its sets. */
export type RiggingTables = {
  lowKg: number;
  highKg: number;
  response: Response;
  /** By total mass (kg): the same model for the same mass, so that alike sets are known as such. */
  known: Map<number, SetModel>;
} | null;

/** A table for every rigging over the masses that were on it, and each set's place in it; null: left out. */
export function modelsOf(
  sets: readonly SetEvidence[],
  lift: LiftModel,
): { models: (SetModel | null)[]; riggings: Map<Rigging, RiggingTables> } {
  const totals = new Map<Rigging, number[]>();
  for (const set of sets) {
    const found = totals.get(set.rigging);
    if (found) found.push(totalKgOf(set));
    else totals.set(set.rigging, [totalKgOf(set)]);
  }
  const riggings = new Map<Rigging, RiggingTables>();
  for (const [rigging, kg] of totals)
    riggings.set(rigging, tablesOf(rigging, lift, Math.min(...kg), Math.max(...kg)));
  return { models: sets.map((set) => modelIn(riggings.get(set.rigging)!, set)), riggings };
}

/** The place of one more set; new tables are made where its rigging or its mass needs them. */
export function modelWith(
  riggings: ReadonlyMap<Rigging, RiggingTables>,
  set: SetEvidence,
  lift: LiftModel,
): { model: SetModel | null; riggings: ReadonlyMap<Rigging, RiggingTables> } {
  const { rigging } = set;
  const kg = totalKgOf(set);
  const found = riggings.get(rigging);
  if (found !== undefined && (found === null || (found.lowKg <= kg && kg <= found.highKg)))
    return { model: modelIn(found, set), riggings };
  const tables = tablesOf(rigging, lift, Math.min(kg, found?.lowKg ?? kg), Math.max(kg, found?.highKg ?? kg));
  return { model: modelIn(tables, set), riggings: new Map(riggings).set(rigging, tables) };
}

function totalKgOf({ barKg, movedBodyKg }: SetEvidence): number {
  return barKg + movedBodyKg;
}

function tablesOf(
  rigging: Rigging,
  { shape, tiring, told }: LiftModel,
  lowKg: number,
  highKg: number,
): RiggingTables {
  try {
    const response = tabulateResponse(rigging, shape, tiring, lowKg, highKg, told);
    return { lowKg, highKg, response, known: new Map() };
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function modelIn(tables: RiggingTables, set: SetEvidence): SetModel | null {
  if (tables === null) return null;
  const { response, known } = tables;
  const kg = totalKgOf(set);
  const model = known.get(kg) ?? setModel(response, set.rigging.start, Math.log(kg), set.movedBodyKg);
  known.set(kg, model);
  return model;
}
