import type { CsvProblem } from '#contract/csv/CsvProblem.ts';
import { parseTable, type TableLine } from '#contract/csv/parseTable.ts';
import { wrongWidth } from '#contract/csv/wrongWidth.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { GivenSet } from '#contract/records/loggedSet.ts';
import { columnsNotTaken } from './columnsNotTaken.ts';
import { dateReader } from './dateReader.ts';
import { type FileColumns, fileColumns } from './fileColumns.ts';
import type { LogColumn } from './logColumns.ts';
import { madeReader } from './madeReader.ts';
import { finder } from './readHung.ts';
import { type LogFile, readLogRow } from './readLogRow.ts';
import { type ColumnMap, suggestColumns } from './suggestColumns.ts';

/** A file as the sets that it tells of, or, with none of them, everything that is wrong in it. */
export interface LogReading {
  sets: GivenSet[];
  problems: CsvProblem[];
  /** Lines below the header. */
  rows: number;
  headers: string[];
  suggested: ColumnMap;
  /** Headers that stand for no column of the log. */
  notTaken: string[];
  /** The unit in which each column with a unit was read. */
  units: LogFile['units'];
  /** Sentences about cells that could have been read otherwise, and how they were. */
  readAs: string[];
}

/**
 * Reads a file of sets: one of ours, or a club's own whose columns `given` names, or, with null, those that look like ours.
 * None was done later than `today`.
 */
export function readLog(
  text: string,
  given: Record<string, string> | null,
  club: ClubRecords,
  today: string,
): LogReading {
  const table = parseTable(text);
  const [header, ...lines] = 'lines' in table ? table.lines : [];
  const headers = header?.cells.map((cell) => cell.trim()) ?? [];
  const suggested = suggestColumns(headers);
  const named = given ?? suggested;
  const notTaken = columnsNotTaken(headers, named, lines);
  const reading = { sets: [], rows: lines.length, headers, suggested, notTaken, units: {}, readAs: [] };
  if ('problem' in table) return { ...reading, problems: [table.problem] };
  if (!header) {
    return {
      ...reading,
      problems: [{ line: 1, column: '', message: 'The file is empty; it needs a header line.' }],
    };
  }
  const columns = fileColumns(headers, named, club.club[0]);
  if ('problems' in columns) {
    return { ...reading, problems: columns.problems.map((problem) => ({ line: header.line, ...problem })) };
  }
  const { sets, problems, readAs } = readLines(lines, headers.length, columns, { club, today });
  const whole = problems.length === 0;
  return { ...reading, units: columns.units, readAs, sets: whole ? sets : [], problems: told(problems) };
}

function readLines(
  lines: TableLine[],
  width: number,
  columns: FileColumns,
  { club, today }: Pick<LogFile, 'club' | 'today'>,
) {
  const { indexOf, units, headerOf } = columns;
  const cellsOf = (column: LogColumn) => lines.map((line) => cellAt(line, indexOf.get(column)));
  const { readDate, readAs: datesAs } = dateReader(cellsOf('date'));
  const { readMade, readAs: madeAs } = madeReader(cellsOf('made'), headerOf('made'));
  const file: LogFile = { club, today, find: finder(club), readDate, readMade, units, headerOf };
  const sets: GivenSet[] = [];
  const problems: CsvProblem[] = [];
  for (const line of lines) {
    const wrong = wrongWidth(line.cells, width);
    if (wrong === null) {
      const row = readLogRow(line.line, (column) => cellAt(line, indexOf.get(column)), file);
      if ('sets' in row) sets.push(...row.sets);
      else problems.push(...row.problems);
    } else {
      problems.push({ line: line.line, column: '', message: wrong });
    }
  }
  return { sets, problems, readAs: [datesAs, madeAs].filter((said) => said !== null) };
}

function cellAt({ cells }: TableLine, at: number | undefined): string {
  return at === undefined ? '' : (cells[at] ?? '');
}

/** What is wrong in the same way on many lines is told once, with the first line. */
function told(problems: CsvProblem[]): CsvProblem[] {
  const times = new Map<string, number>();
  for (const { column, message } of problems) {
    const key = `${column}\n${message}`;
    times.set(key, (times.get(key) ?? 0) + 1);
  }
  const seen = new Set<string>();
  return problems.flatMap((problem) => {
    const key = `${problem.column}\n${problem.message}`;
    const more = (times.get(key) ?? 1) - 1;
    if (seen.has(key)) return [];
    seen.add(key);
    const also = more === 1 ? ' So on 1 more line.' : ` So on ${more} more lines.`;
    return [{ ...problem, message: problem.message + (more === 0 ? '' : also) }];
  });
}
