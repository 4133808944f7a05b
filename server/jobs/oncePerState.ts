import type { ClubRecords } from '#contract/records/allKinds.ts';

/** What follows from the club's records alone, worked out once for each state of them. */
export function oncePerState<Value extends object | string>(
  work: (records: ClubRecords) => Value,
): (records: ClubRecords) => Value {
  const known = new WeakMap<ClubRecords, Value>();
  return (records) => {
    const value = known.get(records) ?? work(records);
    known.set(records, value);
    return value;
  };
}
