import { allKinds, type ClubRecords, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import { CannotAssemble } from './CannotAssemble.ts';

/** The record with this id; says in one sentence what is missing where there is none. */
export function recordById<K extends KindName>(
  records: Pick<ClubRecords, K>,
  kindName: K,
  id: string,
): RecordOf<K> {
  const list: readonly RecordOf<K>[] = records[kindName];
  const found = list.find((record) => record.id === id);
  if (!found) throw new CannotAssemble(`The club has no ${allKinds[kindName].word} with the id "${id}".`);
  return found;
}
