import type { PopulationShape } from '../lifter/populationShape.ts';
import { cutRoom } from '../numeric/room.ts';
import { nodeWeights } from './nodeWeights.ts';
import type { ParameterName, Parameters } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { type ResponseTable, ROOTS, STOP_ROOTS } from './response.ts';

/** One table at one lifter's shape. */
export interface ShapeReading {
  /** ln(S_limit / (total mass x g)). */
  lnLimit: number;
  /** Mean speed (m/s) and effort (s) at the tabulated surpluses. */
  speedMps: Float64Array;
  effortS: Float64Array;
  /** Where a miss stops, by the tabulated roots of what it lacked. */
  stopS: Float64Array;
}

const ofShape: readonly ParameterName[] = ['lnMaxSpeed', 'slope', 'lnRebound', 'heldRebound'];

/** Whether a parameter is one of those that tell a shape. */
export function isOfShape(name: ParameterName): boolean {
  return ofShape.includes(name);
}

/** Reads tables at the shape that the parameters tell; each once. */
export function shapeReader(
  parameters: Parameters,
  shape: PopulationShape,
): (table: ResponseTable, start: Rigging['start']) => ShapeReading {
  const byStart = new Map<Rigging['start'], Float64Array>();
  const known = new Map<ResponseTable, ShapeReading>();
  return (table, start) => {
    const found = known.get(table);
    if (found !== undefined) return found;
    const nodes = byStart.get(start) ?? nodeWeights(parameters, shape, start);
    byStart.set(start, nodes);
    const reading = {
      lnLimit: mean(table.lnLimit, nodes),
      speedMps: mixed(table.speedMps, nodes, ROOTS),
      effortS: mixed(table.effortS, nodes, ROOTS),
      stopS: mixed(table.stopS, nodes, STOP_ROOTS.length),
    };
    known.set(table, reading);
    return reading;
  };
}

const room = cutRoom();

/** The mean of numbers, each counted by its node's weight. */
function mean(numbers: Float64Array, nodes: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) sum += nodes[i]! * numbers[i]!;
  return sum;
}

/** The mean of rows of `length` numbers, each row counted by its node's weight. */
function mixed(rows: Float64Array, nodes: Float64Array, length: number): Float64Array {
  const sums = room(length);
  for (let i = 0; i < nodes.length; i++) {
    const weight = nodes[i]!;
    if (weight === 0) continue;
    const from = i * length;
    for (let j = 0; j < length; j++) sums[j]! += weight * rows[from + j]!;
  }
  return sums;
}
