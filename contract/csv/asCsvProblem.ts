import type { KindName } from '#contract/records/allKinds.ts';
import type { Fault } from '#contract/records/Fault.ts';
import { namedFault, topField } from '#contract/words/namedFault.ts';
import type { CsvProblem } from './CsvProblem.ts';
import { columnsOf } from './columns.ts';

/** The fault of a line, with the column for the field, in the sentence too. */
export function asCsvProblem(kind: KindName, line: number, fault: Fault): CsvProblem {
  const column = columnsOf(kind).find(({ field }) => field.name === topField(fault))?.name;
  return { line, column: column ?? '', message: namedFault(fault, column) };
}
