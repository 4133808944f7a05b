import type { CsvProblem } from '#contract/csv/CsvProblem.ts';
import { toSi } from '#core/units/units.ts';

/** A column of a track and how its cells become SI. */
export interface TrackColumn {
  at: number;
  header: string;
  toSi: (value: number) => number;
}

export interface TrackColumns {
  time: TrackColumn;
  height: TrackColumn;
  /** Fore-aft; null where it was not followed. */
  foreAft: TrackColumn | null;
}

const timeUnits: Units = { s: (value) => value, ms: (value) => value / 1000, min: (value) => 60 * value };
const lengthUnits: Units = {
  m: (value) => value,
  cm: (value) => toSi(value, 'cm'),
  mm: (value) => toSi(value, 'mm'),
  in: (value) => toSi(value, 'in'),
};
type Units = Record<string, (value: number) => number>;

/** Earlier names come first: where there is no z, y is the height, as programs that follow a point in a picture say. */
const names = {
  time: ['t', 'time', 'timestamp', 'elapsed'],
  height: ['z', 'height', 'bar height', 'y'],
  foreAft: ['x', 'fore aft', 'horizontal'],
};

/** Finds time, height and fore-aft in a header whose names end with their unit: `t_s`, `Time (ms)`, `z [mm]`. */
export function trackColumns(header: readonly string[]): TrackColumns | { problem: CsvProblem } {
  const time = column(header, names.time, timeUnits);
  const height = column(header, names.height, lengthUnits);
  const foreAft = column(header, names.foreAft, lengthUnits);
  if (time === null) return missing('time', 't_s or t_ms');
  if (height === null) return missing('bar height', 'z_m, z_cm, z_mm or z_in');
  for (const found of [time, height, foreAft]) {
    if (found !== null && 'problem' in found) return found;
  }
  return { time, height, foreAft } as TrackColumns;
}

function column(
  header: readonly string[],
  known: readonly string[],
  units: Units,
): TrackColumn | { problem: CsvProblem } | null {
  const words = header.map((cell) => cell.toLowerCase().match(/[a-z]+/g) ?? []);
  for (const name of known) {
    const at = words.findIndex((all) => all.join(' ') === name || all.slice(0, -1).join(' ') === name);
    if (at < 0) continue;
    const unit = words[at]!.at(-1)!;
    const toSi = Object.hasOwn(units, unit) ? units[unit] : undefined;
    if (toSi !== undefined && words[at]!.length > 1) return { at, header: header[at]!.trim(), toSi };
    const spelt = Object.keys(units).map((known) => `${name.replace(' ', '_')}_${known}`);
    return problem(header[at]!.trim(), `Name the unit in the first line: ${spelt.join(', ')}.`);
  }
  return null;
}

function missing(what: string, spelt: string): { problem: CsvProblem } {
  return problem('', `The first line names no column of the ${what}; call it ${spelt}.`);
}

function problem(column: string, message: string): { problem: CsvProblem } {
  return { problem: { line: 1, column, message } };
}
