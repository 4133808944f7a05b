import { allKinds, type ClubRecords, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import { neverChanged, referredBy } from '#contract/records/references.ts';
import { slackFault } from '#contract/records/slackReading.ts';
import { wrongDate } from '#contract/records/wrongDate.ts';
import { issueProblem } from '#contract/words/shapeProblem.ts';
import type { CsvProblem } from './CsvProblem.ts';
import { readCell } from './cells.ts';
import { type Column, columnsOf } from './columns.ts';
import { findReferred } from './findReferred.ts';
import type { TableLine } from './parseTable.ts';
import { wrongWidth } from './wrongWidth.ts';

export interface ReadRow<K extends KindName> {
  line: number;
  record: RecordOf<K>;
}

/** What making a record of a line takes beside the line and the club. */
export interface RowMaking {
  newId: () => string;
  /** What was measured or done was not done later. */
  today: string;
}

/** One line as a record, or everything that is wrong with it. */
export function readRow<K extends KindName>(
  kind: K,
  { line, cells }: TableLine,
  columns: Column[],
  club: ClubRecords,
  { newId, today }: RowMaking,
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
  const record = read.data as RecordOf<K>;
  const slack = slackFault(record, known ?? null, club);
  const when = wrongDate(kind, record, known ?? null, today);
  const wrong = [
    ...againstRules(kind, known, record),
    ...namesNobody(kind, record, club),
    ...(slack ? [slack] : []),
    ...(when ? [when] : []),
  ];
  return wrong.length > 0
    ? { problems: wrong.map((problem) => asCsvProblem(kind, line, problem)) }
    : { line, record };
}

function rackFirst(a: { column: Column }, b: { column: Column }): number {
  return Number(b.column.refersTo === 'rack') - Number(a.column.refersTo === 'rack');
}

interface FieldProblem {
  field: string;
  message: string;
}

function againstRules<K extends KindName>(
  kind: K,
  known: RecordOf<K> | undefined,
  record: RecordOf<K>,
): FieldProblem[] {
  if (kind === 'club' && !known) {
    return [{ field: 'id', message: 'A file holds one club; write its id to change it.' }];
  }
  if (known && neverChanged.has(kind) && JSON.stringify(known) !== JSON.stringify(record)) {
    const word = allKinds[kind].word;
    return [{ field: 'id', message: `A ${word} is never changed; leave the id empty to add a new one.` }];
  }
  return [];
}

/** Ids inside nested lists, which a cell gives as they are. */
function namesNobody<K extends KindName>(kind: K, record: RecordOf<K>, club: ClubRecords): FieldProblem[] {
  return referredBy(kind, record).flatMap(({ reference, field, id }) => {
    const there = club[reference.to].some((candidate) => candidate.id === id);
    return there
      ? []
      : [
          {
            field,
            message: `${field} is "${id}"; the club has no ${allKinds[reference.to].word} with that id.`,
          },
        ];
  });
}

/** Names the column instead of the field, in the sentence too. */
function asCsvProblem(kind: KindName, line: number, { field, message }: FieldProblem): CsvProblem {
  const top = field.split(/[.[]/, 1)[0] ?? '';
  const column = columnsOf(kind).find((candidate) => candidate.field.name === top)?.name ?? '';
  return {
    line,
    column,
    message: top !== '' && message.startsWith(top) ? column + message.slice(top.length) : message,
  };
}
