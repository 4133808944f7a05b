import { allKinds, type KindName, type RecordOf } from './allKinds.ts';
import type { Fault } from './Fault.ts';
import type { ReaderWrites } from './ReaderWrites.ts';

/**
 * Why a record of what was measured, done or born cannot be of its date: the day is still to come, or the year a slip of the
 * keys. `before` is the record as it was; a date that stays is not looked at again. What is planned may lie ahead, and so
 * may the day on which something ends.
 */
export function wrongDate<K extends KindName>(
  kind: K,
  record: RecordOf<K>,
  before: RecordOf<K> | null,
  today: string,
  { dateText }: ReaderWrites,
): Fault | null {
  const { date: dated } = allKinds[kind].facts;
  if (!dated?.isPast) return null;
  const { field } = dated;
  const date: unknown = Reflect.get(record, field);
  if (typeof date !== 'string' || (before && Reflect.get(before, field) === date)) return null;
  const message = wrongDateSentence(field, date, today, dateText);
  return message === null ? null : { field, message };
}

/** The sentence, for a field as the reader knows it and, on screen, dates as `spell` writes them; null: such a day can be. */
export function wrongDateSentence(
  field: string,
  date: string,
  today: string,
  spell?: (date: string) => string,
): string | null {
  const limit = (day: string) => (spell ? spell(day) : day);
  if (date > today)
    return `${field} is ${spell ? spell(date) : `"${date}"`}; it must be no later than today, ${limit(today)}.`;
  // As it was typed: "20 Nov 26" would look right.
  if (date < earliest) return `${field} is "${date}"; it must be no earlier than ${limit(earliest)}.`;
  return null;
}

/** Whoever lifts today was born later. */
const earliest = '1900-01-01';
