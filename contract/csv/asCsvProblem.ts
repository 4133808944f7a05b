import type { KindName } from '#contract/records/allKinds.ts';
import type { Fault } from '#contract/records/Fault.ts';
import type { CsvProblem } from './CsvProblem.ts';
import { columnsOf } from './columns.ts';

/** The fault of a line, with columns for fields, in the sentence too, and an empty cell for what is null elsewhere. */
export function asCsvProblem(kind: KindName, line: number, { field, message }: Fault): CsvProblem {
  const top = field.split(/[.[]/, 1)[0] ?? '';
  const columns = columnsOf(kind);
  const named = columns.reduce(
    (sentence, column) => sentence.replaceAll(new RegExp(`\\b${column.field.name}\\b`, 'g'), column.name),
    message.replace(/ is null;/, ' is empty;'),
  );
  return { line, column: columns.find((column) => column.field.name === top)?.name ?? '', message: named };
}
