import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import type { GivenSet } from '#contract/records/loggedSet.ts';
import { referredBy } from '#contract/records/references.ts';

/** The id of a record that another names, and the field where it stands. */
export interface Named {
  field: string;
  kind: KindName;
  id: string;
}

/** Every record that a set names: what a best would name, and the day from which it was entered. */
export function namedBySet(set: GivenSet): Named[] {
  const asBest: RecordOf<'best'> = { ...set, id: '' };
  const named = namedByRecord('best', asBest);
  return set.dayId === null ? named : [...named, { field: 'dayId', kind: 'day', id: set.dayId }];
}

/** Every record that a record of the club names. */
export function namedByRecord<K extends KindName>(kind: K, record: RecordOf<K>): Named[] {
  return referredBy(kind, record).map(({ reference, field, id }) => ({ field, kind: reference.to, id }));
}
