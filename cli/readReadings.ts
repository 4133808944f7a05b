import { parseTable, type TableLine } from '#contract/csv/parseTable.ts';
import { readFigure } from '#contract/log/readFigure.ts';
import type { BandReading } from '#core/band/BandCurve.ts';
import { fromSi, toSi, type Unit } from '#core/units/units.ts';
import { CliError } from './CliError.ts';

export interface ReadingsFile {
  readings: BandReading[];
  /** As the file spells them, to answer in the same. */
  lengthUnit: Unit;
  forceUnit: Unit;
}

const lengthUnits: Record<string, Unit> = {
  length_m: 'm',
  length_cm: 'cm',
  length_mm: 'mm',
  length_in: 'in',
};
/** A hanging scale shows the force of so many kilograms or pounds. */
const forceUnits: Record<string, Unit> = {
  force_N: 'N',
  force_kg: 'kgf',
  force_kgf: 'kgf',
  force_lb: 'lbf',
  force_lbf: 'lbf',
};

/**
 * Reads `length_cm,force_kg,direction` and its kin of a loop of this rest length; the header names the units, `direction` may
 * be missing.
 */
export function readReadings(text: string, restLengthM: number): ReadingsFile {
  const [header, ...body] = rowsOf(text);
  const names = header?.cells ?? [];
  const length = column(names, lengthUnits, 'length');
  const force = column(names, forceUnits, 'force');
  const directionAt = names.indexOf('direction');
  const readings = body.map(({ line, cells }): BandReading => {
    const number = ({ at, name, unit }: Column) => {
      const read = readFigure(cells[at] ?? '', null);
      if ('value' in read && typeof read.value === 'number') return toSi(read.value, unit);
      const why = 'wrong' in read ? read.wrong : 'This cell is empty; it needs a number.';
      throw new CliError(`Line ${line}, ${name}: ${why}`, 2);
    };
    const direction = cells[directionAt] || 'loading';
    if (direction !== 'loading' && direction !== 'unloading') {
      throw new CliError(`Line ${line}, direction: "${direction}" must be loading or unloading.`, 2);
    }
    const reading = { lengthM: number(length), forceN: number(force), direction } as const;
    const refuse = ({ at, name }: Column, why: string) =>
      new CliError(`Line ${line}, ${name}: ${cells[at]} ${why}`, 2);
    if (reading.lengthM <= restLengthM) {
      const rest = Number(fromSi(restLengthM, length.unit).toFixed(3));
      throw refuse(
        length,
        `is no longer than the loop at rest, ${rest} ${length.unit}: it would hang slack.`,
      );
    }
    if (reading.forceN <= 0) throw refuse(force, 'must be above 0.');
    return reading;
  });
  return { readings, lengthUnit: length.unit, forceUnit: force.unit };
}

function rowsOf(text: string): TableLine[] {
  const table = parseTable(text);
  if ('problem' in table) throw new CliError(`Line ${table.problem.line}: ${table.problem.message}`, 2);
  return table.lines.map(({ line, cells }) => ({ line, cells: cells.map((cell) => cell.trim()) }));
}

interface Column {
  at: number;
  name: string;
  unit: Unit;
}

function column(names: string[], units: Record<string, Unit>, what: string): Column {
  const at = names.findIndex((name) => name in units);
  const name = names[at];
  const unit = name === undefined ? undefined : units[name];
  if (name !== undefined && unit !== undefined) return { at, name, unit };
  throw new CliError(`The first line names no ${what}; it needs one of ${Object.keys(units).join(', ')}.`, 2);
}
