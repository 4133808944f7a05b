import type { z } from 'zod';
import { issueProblem } from '#contract/words/shapeProblem.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import type { FileColumns } from './fileColumns.ts';
import type { HeaderUnit } from './headerWords.ts';
import type { LogColumn } from './logColumns.ts';

/** What the shape of a set refuses in a line, told by the column in place of the field, in the sentence too. */
export function rowProblem(
  issue: z.core.$ZodIssue,
  set: object,
  cellOf: (column: LogColumn) => string,
  { headerOf, units }: Pick<FileColumns, 'headerOf' | 'units'>,
): { column: string; message: string } {
  const { field, message } = issueProblem(issue, set);
  const [, named] = columnOf.find(([path]) => field.startsWith(path)) ?? [];
  if (named === undefined) return { column: field, message };
  const column = headerOf(named);
  const limit = limitWords(issue, units[named]);
  if (limit !== null)
    return { column, message: `${column} is "${cellOf(named).trim()}"; it must be ${limit}.` };
  return { column, message: `${column}${message.slice(field.length)}`.replace(' is null;', ' is empty;') };
}

/** The limit of a quantity in the unit that the file counts in; null where the fault is another. */
function limitWords(issue: z.core.$ZodIssue, unit: HeaderUnit | undefined): string | null {
  if (unit === undefined) return null;
  if (issue.code === 'too_small') return `at least ${written(Number(issue.minimum), unit)}`;
  if (issue.code === 'too_big') return `at most ${written(Number(issue.maximum), unit)}`;
  return null;
}

function written(valueSi: number, unit: HeaderUnit): string {
  if (unit === 'min') return `${valueSi / 60} min`;
  return unit === 's' || unit === 'mps' ? `${valueSi} ${unit}` : formatQuantity(valueSi, unit);
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
