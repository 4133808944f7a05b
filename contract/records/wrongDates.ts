import { allKinds, type KindName, type RecordOf } from './allKinds.ts';
import type { Fault } from './Fault.ts';
import { fieldsOf } from './fields.ts';
import type { ReaderWrites } from './ReaderWrites.ts';
import { wrongDateSentence } from './wrongDateSentence.ts';

/**
 * Why a record cannot be of its dates: the year is a slip of the keys, or what was measured, done or born is still to come.
 * `before` is the record as it was; a date that stays is not looked at again. What is planned may lie ahead, and so may the
 * day on which something ends.
 */
export function wrongDates<K extends KindName>(
  kind: K,
  record: RecordOf<K>,
  before: RecordOf<K> | null,
  today: string,
  { dateText }: ReaderWrites,
): Fault[] {
  const { date: dated } = allKinds[kind].facts;
  const pastField = dated?.isPast ? dated.field : null;
  return fieldsOf(kind).flatMap(({ name, isDate }): Fault[] => {
    const date: unknown = Reflect.get(record, name);
    if (!isDate || typeof date !== 'string' || (before && Reflect.get(before, name) === date)) return [];
    const message = wrongDateSentence(name, date, name === pastField ? today : null, dateText);
    return message === null ? [] : [{ field: name, message }];
  });
}
