import type { BandCurve, BandReading } from '#core/band/BandCurve.ts';
import { bandTensionInterval } from '#core/band/bandTension.ts';
import { fromSi, type Unit } from '#core/units/units.ts';

const columns = 64;
const rows = 18;
const gutter = 8;

export interface BandPicture {
  curve: BandCurve;
  readings: readonly BandReading[];
  lengthUnit: Unit;
  forceUnit: Unit;
}

/** Force over length in plain characters: `o` readings, `*` the curve (`+` beyond them), `.` its 95 % interval. */
export function drawBand({ curve, readings, lengthUnit, forceUnit }: BandPicture): string {
  const fromM = curve.restLengthM;
  const toM = Math.max(curve.measuredToM, 1.5 * fromM) * 1.05;
  const lengthAt = (column: number) => fromM + (column / (columns - 1)) * (toM - fromM);
  const intervals = Array.from({ length: columns }, (_, column) =>
    bandTensionInterval(curve, lengthAt(column)),
  );
  const topN = Math.max(...intervals.map(({ high95N }) => high95N), ...readings.map(({ forceN }) => forceN));
  const rowOf = (forceN: number) => Math.round((1 - forceN / topN) * (rows - 1));

  const grid = Array.from({ length: rows }, () => Array.from({ length: columns }, () => ' '));
  const put = (row: number, column: number, mark: string) => {
    const line = grid[row];
    if (line && column >= 0 && column < columns) line[column] = mark;
  };
  intervals.forEach(({ tensionN, low95N, high95N, extrapolated }, column) => {
    for (let row = rowOf(high95N); row <= rowOf(low95N); row++) put(row, column, '.');
    put(rowOf(tensionN), column, extrapolated ? '+' : '*');
  });
  for (const { lengthM, forceN } of readings) {
    put(rowOf(forceN), Math.round(((lengthM - fromM) / (toM - fromM)) * (columns - 1)), 'o');
  }

  const label = (row: number) =>
    row % 4 === 1 || row === rows - 1 ? fromSi(topN * (1 - row / (rows - 1)), forceUnit).toFixed(0) : '';
  const middle = lengthAt((columns - 1) / 2);
  const [left, centre, right] = [fromM, middle, toM].map((lengthM) => shortest(fromSi(lengthM, lengthUnit)));
  return [
    forceName(forceUnit).padStart(gutter - 1),
    ...grid.map((line, row) => `${label(row).padStart(gutter - 1)} |${line.join('')}`.trimEnd()),
    `${' '.repeat(gutter)}+${'-'.repeat(columns)}`,
    `${' '.repeat(gutter)}${left?.padEnd(columns / 2 - 2)}${centre}${`${right} ${lengthUnit}`.padStart(columns / 2 - 1)}`,
    `${' '.repeat(gutter)}o read   * curve   + beyond the longest reading   . 95 % of readings fall here`,
  ].join('\n');
}

/** A scale that shows kilograms or pounds reads a force; on screen it keeps the scale's word. */
export function forceName(unit: Unit): string {
  return unit.replace(/f$/, '');
}

function shortest(value: number): string {
  return String(Number(value.toPrecision(3)));
}
