import { allKinds, type KindName, type RecordOf } from './allKinds.ts';
import { dateOf } from './dateOf.ts';
import { calledBy } from './labels.ts';

/** A record as a coach would name it in a sentence: `band pair "Grey 44"`, `body mass of 2026-11-25`. */
export function recordName<K extends KindName>(kindName: K, record: RecordOf<K>): string {
  const { word } = allKinds[kindName];
  const called = calledBy(record);
  if (called !== null) return `${word} "${called}"`;
  if ('faceMassKg' in record) return `${word} of ${record.faceMassKg} kg`;
  const on = dateOf(kindName, record);
  return on === null ? word : `${word} of ${on}`;
}
