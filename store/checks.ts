import type { Kysely } from 'kysely';
import { allKinds, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import { type Beside, faultsOf, kindsBeside } from '#contract/records/faultsOf.ts';
import { recordName } from '#contract/records/recordName.ts';
import { references, referredBy } from '#contract/records/references.ts';
import { asShaped } from './asShaped.ts';
import type { ChangeEntry } from './changeLog.ts';
import { kindTable } from './kindTable.ts';
import { Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';

/** The record as its shape reads it, defaults filled in; refused with the first field that is wrong. */
export function checkShape<K extends KindName>(kindName: K, record: unknown): RecordOf<K> {
  return asShaped(allKinds[kindName].shape, record) as RecordOf<K>;
}

/** A club has one record of itself, from its founding on. */
export function checkClubStays({ kind, before, after }: ChangeEntry): void {
  if (kind === 'club' && !(before && after)) {
    throw new Refusal('conflict', '', 'A club has exactly one record of itself; change that one.');
  }
}

/** Nothing that is to be kept is what cannot be, by itself or beside the club as the change leaves it. `today` null: no date is looked at. */
export async function checkFaults(
  db: Kysely<Tables>,
  clubId: string,
  entries: readonly ChangeEntry[],
  today: string | null,
): Promise<void> {
  const kept = entries.filter(({ after }) => after !== null);
  const club: Record<string, RecordOf<KindName>[]> = {};
  for (const kind of new Set(kept.flatMap((entry) => [...kindsBeside(entry.kind)]))) {
    const ofKind = entries.filter((entry) => entry.kind === kind);
    const touched = new Set(ofKind.map(({ id }) => id));
    const untouched = (await kindTable(db, clubId, kind).live()).filter(({ id }) => !touched.has(id));
    club[kind] = [...untouched, ...ofKind.flatMap(({ after }) => after ?? [])];
  }
  for (const { kind, before, after } of kept) {
    const [fault] = faultsOf(kind, after!, before, club as Beside, today);
    if (fault) throw new Refusal(fault.isClash ? 'conflict' : 'invalid', fault.field, fault.message);
  }
}

/** After the change is written: nothing that the club still has names a record that the change removed. */
export async function checkUnused(db: Kysely<Tables>, clubId: string, entries: ChangeEntry[]): Promise<void> {
  const removed = entries.flatMap(({ kind, before, after }) => (before && !after ? [{ kind, before }] : []));
  const kinds = new Set(removed.map(({ kind }) => kind));
  const users = new Set(references.filter(({ to }) => kinds.has(to)).map(({ from }) => from));
  for (const user of users) {
    for (const record of await kindTable(db, clubId, user).live()) {
      for (const { reference, id } of referredBy(user, record)) {
        const gone = removed.find(({ kind, before }) => kind === reference.to && before.id === id);
        if (!gone) continue;
        const names = [recordName(gone.kind, gone.before), recordName(user, record)];
        const { ratherThanRemoved } = allKinds[gone.kind].facts;
        const instead = ratherThanRemoved === undefined ? '' : `; ${ratherThanRemoved}`;
        const sentence = `The ${names[0]} cannot be removed: the ${names[1]} still uses it${instead}.`;
        throw new Refusal('conflict', '', sentence);
      }
    }
  }
}
