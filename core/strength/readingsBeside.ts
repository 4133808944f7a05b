import type { ParameterName, Parameters } from './parameters.ts';
import { type LiftModel, type ReadModel, readerOf } from './readGroup.ts';
import { isOfShape, shapeReader } from './readShape.ts';
import type { SetModel } from './setModel.ts';

/** Steps by which the change of a reading with each parameter is taken. */
export const DIFFERENCE = 0.02;

/** What one set model says at a place of the parameters, and beside it in each of them. */
export interface ReadingBeside {
  now: ReadModel;
  /** One for each parameter, that moved by `DIFFERENCE`. */
  beside: ReadModel[];
  straightSlope: number[];
  /** Which parameters bear on the strength that reps cost. */
  bearing: number[];
}

/** Readings of every model at `around`, and beside it in each parameter; made once a model. */
export function readingsBeside(
  lift: LiftModel,
  around: Parameters,
  names: readonly ParameterName[],
): (model: SetModel) => ReadingBeside {
  const readShape = shapeReader(around, lift.shape);
  const read = readerOf(around, lift, readShape);
  const readBeside = names.map((name) => {
    const moved = { ...around, [name]: around[name] + DIFFERENCE };
    return isOfShape(name) ? readerOf(moved, lift) : readerOf(moved, lift, readShape);
  });
  const known = new Map<SetModel, ReadingBeside>();
  return (model) => {
    const found = known.get(model);
    if (found !== undefined) return found;
    const now = read(model);
    const beside = readBeside.map((readOne) => readOne(model));
    const reading: ReadingBeside = {
      now,
      beside,
      straightSlope: beside.map(({ straightLn }) => (straightLn - now.straightLn) / DIFFERENCE),
      bearing: beside.flatMap(({ table }, k) =>
        table.lossLn[1] === now.table.lossLn[1] && table.costOf(2) === now.table.costOf(2) ? [] : k,
      ),
    };
    known.set(model, reading);
    return reading;
  };
}
