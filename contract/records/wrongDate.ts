import { allKinds, type KindName, type RecordOf } from './allKinds.ts';
import type { Fault } from './Fault.ts';
import type { ReaderWrites } from './ReaderWrites.ts';
import { wrongDateSentence } from './wrongDateSentence.ts';

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
