import { allKinds, type KindName } from './allKinds.ts';

/** The date that a record bears, as its kind says; null where it has none. */
export function dateOf(kind: KindName, record: object): string | null {
  const { date } = allKinds[kind].facts;
  const on: unknown = date === null ? null : Reflect.get(record, date.field);
  return typeof on === 'string' ? on : null;
}
