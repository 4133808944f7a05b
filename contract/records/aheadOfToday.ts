import type { KindName, RecordOf } from './allKinds.ts';

/** A date that cannot be: the field and one sentence with its value and what is allowed. */
export interface DateFault {
  field: string;
  message: string;
}

/**
 * Why a record of what was measured, done or born cannot be of its date: the day is still to come. `before` is the record as
 * it was; a date that stays is not looked at again. What is planned may lie ahead, and so may the day on which something ends.
 */
export function aheadOfToday<K extends KindName>(
  kind: K,
  record: RecordOf<K>,
  before: RecordOf<K> | null,
  today: string,
): DateFault | null {
  const field = happenedOn[kind];
  if (field === undefined) return null;
  const date: unknown = Reflect.get(record, field);
  if (typeof date !== 'string' || date <= today) return null;
  if (before && Reflect.get(before, field) === date) return null;
  return { field, message: aheadSentence(field, `"${date}"`, today) };
}

/** The sentence, for a field and dates as the reader knows them. */
export function aheadSentence(field: string, date: string, today: string): string {
  return `${field} is ${date}; it must be no later than today, ${today}.`;
}

const happenedOn: Partial<Record<KindName, string>> = {
  bandReading: 'takenOn',
  scaleReading: 'takenOn',
  lifter: 'bornOn',
  bodyMass: 'takenOn',
  liftHeights: 'measuredOn',
  best: 'doneOn',
};
