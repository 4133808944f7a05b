import type { Club } from '#contract/records/club.ts';
import { type HeaderUnit, headerWords } from './headerWords.ts';
import { type LogColumn, logColumnNames, logColumns, type Measure, neededColumns } from './logColumns.ts';

/** Where each column of the log stands in a file, and its unit there. */
export interface FileColumns {
  indexOf: Map<LogColumn, number>;
  units: Partial<Record<LogColumn, HeaderUnit>>;
  headerOf: (column: LogColumn) => string;
}

/** The columns by the headers that `given` names; a header without a unit counts in the club's own. */
export function fileColumns(
  headers: readonly string[],
  given: Record<string, string>,
  club: Club | undefined,
): FileColumns | { problems: { column: string; message: string }[] } {
  const indexOf = new Map<LogColumn, number>();
  const units: FileColumns['units'] = {};
  const problems: { column: string; message: string }[] = [];
  for (const [name, header] of Object.entries(given)) {
    const column = logColumnNames.find((known) => known === name);
    const at = headers.indexOf(header);
    if (!column) {
      const allowed = logColumnNames.join(', ');
      problems.push({
        column: name,
        message: `"${name}" is not a column of the log; allowed are ${allowed}.`,
      });
    } else if (at < 0) {
      problems.push({
        column: name,
        message: `The file has no column "${header}"; it has ${headers.join(', ')}.`,
      });
    } else if ([...indexOf.values()].includes(at)) {
      const other = logColumnNames.find((known) => indexOf.get(known) === at);
      problems.push({
        column: name,
        message: `The column "${header}" is given for ${other} already; one column holds one thing.`,
      });
    } else if (headers.lastIndexOf(header) > at) {
      problems.push({ column: header, message: `The column "${header}" appears twice.` });
    } else {
      indexOf.set(column, at);
      const unit = unitOf(header, logColumns[column].measure, club);
      if (unit !== null) units[column] = unit;
    }
  }
  const headerOf = (column: LogColumn) =>
    headers[indexOf.get(column) ?? -1] ?? logColumns[column].header ?? column;
  for (const column of neededColumns) {
    if (column in given) continue;
    problems.push({
      column: headerOf(column),
      message: `No column of the file tells the ${wordFor[column] ?? column}; one with the header ${headerOf(column)} would.`,
    });
  }
  return problems.length > 0 ? { problems } : { indexOf, units, headerOf };
}

const wordFor: Partial<Record<LogColumn, string>> = { bar: 'weight on the bar', reps: 'number of reps' };

function unitOf(header: string, measure: Measure, club: Club | undefined): HeaderUnit | null {
  if (measure === null) return null;
  const { unit } = headerWords(header);
  if (unit !== null && unitsOf[measure].includes(unit)) return unit;
  if (measure === 'time') return 's';
  return measure === 'mass' ? (club?.massUnit ?? 'kg') : (club?.lengthUnit ?? 'cm');
}

const unitsOf: Record<'mass' | 'length' | 'time', readonly HeaderUnit[]> = {
  mass: ['kg', 'lb'],
  length: ['m', 'cm', 'mm', 'in'],
  time: ['s', 'min'],
};
