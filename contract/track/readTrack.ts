import type { CsvProblem } from '#contract/csv/CsvProblem.ts';
import { parseTable } from '#contract/csv/parseTable.ts';
import { usualRateHz } from '#core/track/evenTrack.ts';
import type { TrackPoint } from '#core/track/Track.ts';
import { type TrackColumn, trackColumns } from './trackColumns.ts';

/** The bar's way as a file tells it, in SI; `passedOver` counts lines without a height. */
export interface ReadTrack {
  points: TrackPoint[];
  passedOver: number;
}

const leastPoints = 20;
const mostPoints = 300_000;
/** Slower tracks miss what a fast rep does between two readings. */
const slowestHz = 15;
/** A height beyond this is a mistaken unit. */
const farthestM = 10;
const mostProblems = 10;

/**
 * Reads a table of time, bar height and perhaps fore-aft place. Names end with the unit (`t_s`, `z_mm`); cells stand
 * between commas, semicolons or tabs; where it is not commas, decimals may have one. Lines with an empty height are
 * passed over.
 */
export function readTrack(text: string): ReadTrack | { problems: CsvProblem[] } {
  const table = parseTable(text);
  if ('problem' in table) return { problems: [table.problem] };
  const [header, ...lines] = table.lines;
  const columns = trackColumns(header?.cells ?? []);
  if ('problem' in columns) return { problems: [columns.problem] };
  const points: TrackPoint[] = [];
  const problems: CsvProblem[] = [];
  for (const { line, cells } of lines) {
    if (problems.length === mostProblems) break;
    const cell = ({ at, header }: TrackColumn) => ({ line, column: header, text: (cells[at] ?? '').trim() });
    const height = cell(columns.height);
    if (height.text === '') continue;
    const time = cell(columns.time);
    const tS = columns.time.toSi(number(time.text));
    const zM = columns.height.toSi(number(height.text));
    const foreAft = columns.foreAft && cell(columns.foreAft);
    const xM = foreAft && foreAft.text !== '' ? columns.foreAft!.toSi(number(foreAft.text)) : null;
    const beforeS = points.at(-1)?.tS ?? Number.NEGATIVE_INFINITY;
    const wrong = (of: typeof time, message: string) => problems.push({ line, column: of.column, message });
    if (Number.isNaN(tS)) wrong(time, notNumber(time.text));
    else if (Number.isNaN(zM)) wrong(height, notNumber(height.text));
    else if (Number.isNaN(xM)) wrong(foreAft!, notNumber(foreAft!.text));
    else if (tS <= beforeS) wrong(time, `${time.text} is not later than the line before.`);
    else if (Math.abs(zM) > farthestM)
      wrong(height, `${height.text} is not a bar height: is the unit right?`);
    else points.push({ tS, zM, xM });
  }
  if (problems.length === 0) problems.push(...ofTheWhole(points));
  return problems.length > 0 ? { problems } : { points, passedOver: lines.length - points.length };
}

function ofTheWhole(points: readonly TrackPoint[]): CsvProblem[] {
  const count = points.length;
  if (count < leastPoints)
    return whole(`A track needs ${leastPoints} readings or more; this one has ${count}.`);
  if (count > mostPoints) return whole(`A track has at most ${mostPoints} readings; this one has ${count}.`);
  const rateHz = usualRateHz(points);
  if (rateHz < slowestHz)
    return whole(`${rateHz.toFixed(1)} readings a second are too few; speeds need ${slowestHz} or more.`);
  return [];
}

function whole(message: string): CsvProblem[] {
  return [{ line: 1, column: '', message }];
}

/** NaN where the text is no number. */
function number(text: string): number {
  const plain = text.replace(/^([+-]?\d*),(\d+)$/, '$1.$2');
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : Number.NaN;
}

function notNumber(text: string): string {
  return `"${text}" is not a number.`;
}
