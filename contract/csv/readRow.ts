import { allKinds, type ClubRecords, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import { issueProblem } from '#contract/words/shapeProblem.ts';
import { asCsvProblem } from './asCsvProblem.ts';
import type { CsvProblem } from './CsvProblem.ts';
import { readCell } from './cells.ts';
import type { Column } from './columns.ts';
import { findReferred } from './findReferred.ts';
import type { TableLine } from './parseTable.ts';
import { wrongWidth } from './wrongWidth.ts';

export interface ReadRow<K extends KindName> {
  line: number;
  record: RecordOf<K>;
}

/** One line as a record, or everything that is wrong with it. */
export function readRow<K extends KindName>(
  kind: K,
  { line, cells }: TableLine,
  columns: Column[],
  club: ClubRecords,
  newId: () => string,
): ReadRow<K> | { problems: CsvProblem[] } {
  const width = wrongWidth(cells, columns.length);
  if (width !== null) return { problems: [{ line, column: '', message: width }] };
  const problems: CsvProblem[] = [];
  const given: Record<string, unknown> = {};
  // The rack first: it narrows what a label in another column can mean.
  const inOrder = columns.map((column, i) => ({ column, cell: cells[i] ?? '' })).toSorted(rackFirst);
  for (const { column, cell } of inOrder) {
    const reading = readCell(column.field, cell);
    const referred =
      column.refersTo && 'value' in reading && typeof reading.value === 'string'
        ? findReferred(club, column.refersTo, reading.value, given['rackId'])
        : reading;
    if ('wrong' in referred) problems.push({ line, column: column.name, message: referred.wrong });
    else given[column.field.name] = referred.value;
  }
  if (problems.length > 0) return { problems };

  const known = club[kind].find(({ id }) => id === given['id']);
  const id = given['id'] ?? newId();
  const whole = { ...known, ...given, id };
  const read = allKinds[kind].shape.safeParse(whole);
  if (!read.success) {
    return {
      problems: read.error.issues.map((issue) => asCsvProblem(kind, line, issueProblem(issue, whole))),
    };
  }
  return { line, record: read.data as RecordOf<K> };
}

function rackFirst(a: { column: Column }, b: { column: Column }): number {
  return Number(b.column.refersTo === 'rack') - Number(a.column.refersTo === 'rack');
}
