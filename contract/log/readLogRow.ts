import type { CsvProblem } from '#contract/csv/CsvProblem.ts';
import { type CellReading, readCell } from '#contract/csv/cells.ts';
import { unguardFormula } from '#contract/csv/formulaGuard.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Field } from '#contract/records/fields.ts';
import { type GivenSet, givenSet } from '#contract/records/loggedSet.ts';
import { issueProblem } from '#contract/words/shapeProblem.ts';
import type { HeaderUnit } from './headerWords.ts';
import { namedLift } from './liftWords.ts';
import { type LogColumn, neededColumns } from './logColumns.ts';
import { readFigure, readFigures } from './readFigure.ts';
import { type Find, readBands, readChains } from './readHung.ts';

/** How the columns of one file are to be read. */
export interface LogFile {
  club: ClubRecords;
  find: Find;
  readDate: (cell: string) => CellReading;
  /** Units of the columns that count a mass, a length or a time. */
  units: Partial<Record<LogColumn, HeaderUnit>>;
  /** A column as this file's header spells it. */
  headerOf: (column: LogColumn) => string;
}

/** One line as the sets that it stands for, or everything that is wrong with it. Columns that the file lacks are empty. */
export function readLogRow(
  line: number,
  cellOf: (column: LogColumn) => string,
  file: LogFile,
): { sets: GivenSet[] } | { problems: CsvProblem[] } {
  const problems: CsvProblem[] = [];
  const refuse = (column: LogColumn, message: string) =>
    problems.push({ line, column: file.headerOf(column), message });
  const take = (column: LogColumn, read: (cell: string) => CellReading): unknown => {
    const reading = read(cellOf(column));
    if ('value' in reading) return reading.value;
    refuse(column, reading.wrong);
    return undefined;
  };
  const text = (column: LogColumn) => unguardFormula(cellOf(column));
  const figure = (column: LogColumn) => take(column, (cell) => readFigure(cell, file.units[column] ?? null));
  const named = (column: 'lifter' | 'rack') =>
    take(column, (cell) => (cell.trim() === '' ? { value: null } : file.find(column, unguardFormula(cell))));

  const empty = neededColumns.filter((column) => cellOf(column).trim() === '');
  for (const column of empty) refuse(column, `This line has no ${file.headerOf(column)}.`);
  if (empty.length > 0) return { problems };
  const lift = namedLift(cellOf('lift'));
  if (lift === null) refuse('lift', noLift(cellOf('lift')));
  const way = wayOf(cellOf('start'), lift?.way ?? null);
  const reps = figure('reps');
  const given = {
    lifterId: named('lifter'),
    doneOn: take('date', file.readDate),
    order: figure('order'),
    lift: lift?.lift,
    equipment: text('equipment').trim().toLowerCase().replace(/ ply$/, '-ply') || 'raw',
    reps,
    made: figure('made') ?? reps,
    stoppedAtS: figure('stoppedAt'),
    meanSpeedsMps: take('meanSpeeds', readFigures),
    peakSpeedsMps: take('peakSpeeds', readFigures),
    repsInReserve: figure('repsInReserve'),
    restS: whole(figure('rest')),
    bodyMassKg: figure('bodyMass'),
    platform: take('platform', (cell) => readCell(yesOrNo, cell)),
    place: text('place'),
    note: text('note'),
  };
  const effort = figure('effort');
  if (typeof effort === 'number') {
    if (given.repsInReserve === null) given.repsInReserve = 10 - effort;
    else refuse('effort', 'Give the effort rating or the reps in reserve, not both.');
  }
  const rackId = (named('rack') ?? null) as string | null;
  const hung = readBands(text('bands'), { ...file, rackId, lift: lift?.lift ?? 'squat' });
  if ('wrong' in hung) refuse('bands', hung.wrong);
  const chained = readChains(text('chains'), file.find);
  if ('wrong' in chained) refuse('chains', chained.wrong);
  const start = { way, heightM: figure('startHeight') };
  const barKg = figure('bar');
  const sets = figure('sets') ?? 1;
  if (!Number.isInteger(sets) || Number(sets) < 1 || Number(sets) > 50)
    refuse('sets', `${sets} is not a number of sets.`);
  if (problems.length > 0 || 'wrong' in hung || 'wrong' in chained) return { problems };

  const set = {
    ...given,
    setup: { rackId: hung.rackId, start, barKg, bands: hung.bands, chains: chained.chains },
  };
  const read = givenSet.safeParse(set);
  if (read.success) return { sets: Array.from({ length: Number(sets) }, () => read.data) };
  return { problems: read.error.issues.map((issue) => asCsvProblem(issueProblem(issue, set))) };

  /** Names the column instead of the field, in the sentence too. */
  function asCsvProblem({ field, message }: { field: string; message: string }): CsvProblem {
    const known = columnOf.find(([path]) => field.startsWith(path));
    const column = known ? file.headerOf(known[1]) : '';
    return {
      line,
      column,
      message: known ? `${column}${message.slice(field.length)}`.replace(' is null;', ' is empty;') : message,
    };
  }
}

const columnOf: readonly (readonly [field: string, column: LogColumn])[] = [
  ['lifterId', 'lifter'],
  ['doneOn', 'date'],
  ['setup.start.way', 'start'],
  ['setup.start', 'startHeight'],
  ['setup.barKg', 'bar'],
  ['setup.bands', 'bands'],
  ['setup.chains', 'chains'],
  ['stoppedAtS', 'stoppedAt'],
  ['meanSpeedsMps', 'meanSpeeds'],
  ['peakSpeedsMps', 'peakSpeeds'],
  ['repsInReserve', 'repsInReserve'],
  ['reps', 'reps'],
  ['restS', 'rest'],
  ['bodyMassKg', 'bodyMass'],
  ['order', 'order'],
  ['made', 'made'],
  ['equipment', 'equipment'],
  ['place', 'place'],
  ['note', 'note'],
];

const yesOrNo: Field = { name: 'platform', sort: 'truth', nullable: false, optional: true };

/** Seconds from minutes are whole up to rounding. */
function whole(seconds: unknown): unknown {
  return typeof seconds === 'number' ? Math.round(seconds) : seconds;
}

/** What the column says, else the lift's name, else a free start. An unknown word is left for the shape to refuse. */
function wayOf(cell: string, ofLift: string | null): string {
  return cell.trim().toLowerCase() || (ofLift ?? 'free');
}

function noLift(cell: string): string {
  return `"${cell}" is not a lift that is kept here: squat, bench or deadlift, with box, pins, boards, blocks, deficit or paused before or after it.`;
}
