import type { CsvProblem } from '#contract/csv/CsvProblem.ts';
import { type CellReading, readCell } from '#contract/csv/cells.ts';
import { unguardFormula } from '#contract/csv/formulaGuard.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type GivenSet, givenSet } from '#contract/records/loggedSet.ts';
import { wrongDateSentence } from '#contract/records/wrongDateSentence.ts';
import type { HeaderUnit } from './headerWords.ts';
import { type LogColumn, neededColumns } from './logColumns.ts';
import type { ReadMade } from './madeReader.ts';
import { namedLift } from './namedLift.ts';
import { readFigure, readFigures } from './readFigure.ts';
import { type Find, readBands, readChains } from './readHung.ts';
import { rowProblem } from './rowProblem.ts';

/** How the columns of one file are to be read. */
export interface LogFile {
  club: ClubRecords;
  /** The last day on which a set can have been done. */
  today: string;
  find: Find;
  readDate: (cell: string) => CellReading;
  readMade: ReadMade;
  /** Units of the columns that count a mass, a length or a time. */
  units: Partial<Record<LogColumn, HeaderUnit>>;
  /** A column as this file's header spells it. */
  headerOf: (column: LogColumn) => string;
}

type CellOf = (column: LogColumn) => string;

/** One line as the sets that it stands for, or everything that is wrong with it. Columns that the file lacks are empty. */
export function readLogRow(
  line: number,
  cellOf: CellOf,
  file: LogFile,
): { sets: GivenSet[] } | { problems: CsvProblem[] } {
  const problems: CsvProblem[] = [];
  const refuse: Refuse = (column, message) => problems.push({ line, column: file.headerOf(column), message });
  for (const column of neededColumns) {
    if (cellOf(column).trim() === '') refuse(column, `This line has no ${file.headerOf(column)}.`);
  }
  if (problems.length > 0) return { problems };
  const { sets, ...set } = fieldsOf(cellOf, file, refuse);
  if (problems.length > 0) return { problems };
  const read = givenSet.safeParse(set);
  if (!read.success) {
    // Where no cell tells the reps made they are those asked for, and wrong with them.
    const told = read.error.issues.filter(({ path }) => path[0] !== 'made' || cellOf('made').trim() !== '');
    return { problems: told.map((issue) => ({ line, ...rowProblem(issue, set, cellOf, file) })) };
  }
  const when = wrongDateSentence(file.headerOf('date'), read.data.doneOn, file.today);
  if (when !== null) {
    refuse('date', when);
    return { problems };
  }
  return { sets: Array.from({ length: sets }, () => read.data) };
}

type Refuse = (column: LogColumn, message: string) => void;

/** What the cells say, not yet checked as a whole. */
function fieldsOf(cellOf: CellOf, file: LogFile, refuse: Refuse) {
  const take = (column: LogColumn, read: (cell: string) => CellReading): unknown => {
    const reading = read(cellOf(column));
    if ('value' in reading) return reading.value;
    refuse(column, reading.wrong);
    return undefined;
  };
  const text = (column: LogColumn) => unguardFormula(cellOf(column));
  const figure = (column: LogColumn) =>
    take(column, (cell) => readFigure(cell, file.units[column] ?? null)) as number | null | undefined;
  const named = (column: 'lifter' | 'rack') =>
    take(column, (cell) =>
      cell.trim() === '' ? { value: null } : file.find(column, unguardFormula(cell)),
    ) as string | null | undefined;
  const truth = (column: LogColumn) =>
    take(column, (cell) => readCell({ sort: 'truth', nullable: false }, cell));

  const lift = namedLift(cellOf('lift'));
  if (lift === null) refuse('lift', noLift(cellOf('lift')));
  const hung = readBands(text('bands'), {
    ...file,
    rackId: named('rack') ?? null,
    lift: lift?.lift ?? 'squat',
  });
  if ('wrong' in hung) refuse('bands', hung.wrong);
  const chained = readChains(text('chains'), file.find);
  if ('wrong' in chained) refuse('chains', chained.wrong);
  const sets = figure('sets') ?? 1;
  if (!Number.isInteger(sets) || sets < 1 || sets > mostSets)
    refuse('sets', `${file.headerOf('sets')} is ${sets}; it must be a whole number from 1 to ${mostSets}.`);
  const [reserve, effort] = [figure('repsInReserve'), figure('effort') ?? null];
  if (effort !== null && !(effort >= 0 && effort <= utmostEffort && Number.isInteger(2 * effort)))
    refuse(
      'effort',
      `${file.headerOf('effort')} is ${effort}; it must be a rating from 0 to ${utmostEffort} in halves.`,
    );
  if (effort !== null && reserve !== null)
    refuse('effort', 'Give the effort rating or the reps in reserve, not both.');
  const [reps, restS] = [figure('reps'), figure('rest')];
  return {
    sets,
    lifterId: named('lifter'),
    doneOn: take('date', file.readDate),
    order: figure('order'),
    lift: lift?.lift,
    equipment: text('equipment').trim().toLowerCase().replace(/ ply$/, '-ply') || 'raw',
    setup: {
      ...hung,
      ...chained,
      // An unknown word is left for the shape to refuse.
      start: {
        way: cellOf('start').trim().toLowerCase() || (lift?.way ?? 'free'),
        heightM: figure('startHeight'),
      },
      barKg: figure('bar'),
    },
    barChecked: truth('barChecked'),
    reps,
    made: take('made', (cell) => file.readMade(cell, reps, sets)) ?? reps,
    stoppedAtS: figure('stoppedAt'),
    meanSpeedsMps: take('meanSpeeds', readFigures),
    peakSpeedsMps: take('peakSpeeds', readFigures),
    repsInReserve: effort === null ? reserve : utmostEffort - effort,
    // Minutes make whole seconds only up to rounding.
    restS: typeof restS === 'number' ? Math.round(restS) : restS,
    bodyMassKg: figure('bodyMass'),
    platform: truth('platform'),
    place: text('place'),
    note: text('note'),
  };
}

/** One line stands for no more sets alike. */
const mostSets = 50;
/** At this rating of effort no rep was left; below it, one less for each. */
const utmostEffort = 10;

function noLift(cell: string): string {
  return `"${cell}" is not a lift that the log keeps: squat, bench or deadlift, with box, pins, boards, blocks, deficit or paused before or after it.`;
}
