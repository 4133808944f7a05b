import { allKinds, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** The record that a field of a query names by its id, or 404. */
export async function recordNamed<K extends KindName>(
  store: ClubStore,
  kind: K,
  field: string,
  id: string,
): Promise<RecordOf<K>> {
  const record = await store.get(kind, id);
  if (record) return record;
  throw new Refusal('missing', field, `The club has no ${allKinds[kind].word} with the id "${id}".`);
}

/** The lifter whom a query must name; `what` says what for: "estimates are". */
export async function lifterNamed(store: ClubStore, id: string | undefined, what: string) {
  if (id !== undefined) return recordNamed(store, 'lifter', 'lifterId', id);
  throw new Refusal('invalid', 'lifterId', `lifterId is missing; it must say whose ${what} asked for.`);
}
