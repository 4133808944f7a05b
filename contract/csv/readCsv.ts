import type { ClubRecords, KindName, RecordOf } from '#contract/records/allKinds.ts';
import type { CsvProblem } from './CsvProblem.ts';
import { type Column, columnsOf } from './columns.ts';
import { oddReadings } from './oddReadings.ts';
import { parseTable, type TableLine } from './parseTable.ts';
import { type ReadRow, readRow } from './readRow.ts';
import { wrongRows } from './wrongRows.ts';

/** A file as the records it would make, or, with none of them, everything that is wrong in it. */
export interface CsvReading<K extends KindName> {
  records: RecordOf<K>[];
  /** How many of them the club does not have yet. */
  added: number;
  /** How many of them are not as the club has them. */
  changed: number;
  problems: CsvProblem[];
  /** Lines that may be right and may be slips: they are taken, once the coach has seen them. */
  questions: CsvProblem[];
}

/**
 * Reads a file of one kind against what the club has, and reports every wrong line. A line whose id the club has changes that
 * record, columns that the file leaves out staying as they are; any other line adds one, with the id that it gives or a new one.
 */
export function readCsv<K extends KindName>(
  kind: K,
  text: string,
  club: ClubRecords,
  { newId, today }: { newId: () => string; today: string },
): CsvReading<K> {
  const table = parseTable(text);
  if ('problem' in table) return refused([table.problem]);
  const [header, ...lines] = table.lines;
  if (!header)
    return refused([{ line: 1, column: '', message: 'The file is empty; it needs a header line.' }]);
  const columns = readHeader(kind, header);
  if ('problems' in columns) return refused(columns.problems);

  const rows = lines.map((line) => readRow(kind, line, columns.columns, club, newId));
  const good = rows.filter((row): row is ReadRow<K> => 'record' in row);
  const unread = rows.flatMap((row) => ('problems' in row ? row.problems : []));
  const problems = [...unread, ...wrongRows(kind, good, club, today)];
  if (problems.length > 0) return refused(problems.toSorted((a, b) => a.line - b.line));
  const known = new Map(club[kind].map((record) => [record.id, JSON.stringify(record)]));
  const records = good.map(({ record }) => record);
  const added = records.filter(({ id }) => !known.has(id)).length;
  const questions = oddReadings(kind, good, club);
  const unchanged = records.filter((record) => known.get(record.id) === JSON.stringify(record)).length;
  return { records, added, changed: records.length - added - unchanged, problems: [], questions };
}

function refused<K extends KindName>(problems: CsvProblem[]): CsvReading<K> {
  return { records: [], added: 0, changed: 0, problems, questions: [] };
}

function readHeader(
  kind: KindName,
  { line, cells }: TableLine,
): { columns: Column[] } | { problems: CsvProblem[] } {
  const known = columnsOf(kind);
  const names = cells.map((cell) => cell.trim());
  const problems: CsvProblem[] = [];
  const columns = names.flatMap((column, i) => {
    const found = known.find(({ name }) => name === column);
    if (!found) {
      const allowed = known.map(({ name }) => name).join(', ');
      problems.push({
        line,
        column,
        message: `"${column}" is not a column of this file; allowed are ${allowed}.`,
      });
    }
    if (names.indexOf(column) < i)
      problems.push({ line, column, message: `The column "${column}" appears twice.` });
    return found ?? [];
  });
  return problems.length > 0 ? { problems } : { columns };
}
