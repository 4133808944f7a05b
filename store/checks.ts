import type { Kysely } from 'kysely';
import { allKinds, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import { labelKey } from '#contract/records/labels.ts';
import { neverChanged, references, referredBy } from '#contract/records/references.ts';
import { slackFault } from '#contract/records/slackReading.ts';
import { wrongDate } from '#contract/records/wrongDate.ts';
import { recordName } from '#contract/words/recordName.ts';
import { asShaped } from './asShaped.ts';
import type { ChangeEntry } from './changeLog.ts';
import { kindTable } from './kindTable.ts';
import { Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';

/** The record as its shape reads it, defaults filled in; refused with the first field that is wrong. */
export function checkShape<K extends KindName>(kindName: K, record: unknown): RecordOf<K> {
  return asShaped(allKinds[kindName].shape, record) as RecordOf<K>;
}

/** Some things happen once: a club has one record of itself, and a reading is never changed. */
export function checkOnce({ kind, before, after }: ChangeEntry): void {
  if (kind === 'club' && !(before && after)) {
    throw new Refusal('conflict', '', 'A club has exactly one record of itself; change that one.');
  }
  if (before && after && neverChanged.has(kind)) {
    const word = allKinds[kind].word;
    throw new Refusal('conflict', '', `A ${word} is never changed; remove it and enter a new one.`);
  }
}

/** No two of a kind share a label, among what the change leaves in place. */
export async function checkLabels(db: Kysely<Tables>, clubId: string, entries: ChangeEntry[]): Promise<void> {
  for (const kind of new Set(entries.map((entry) => entry.kind))) {
    const changed = entries.filter((entry) => entry.kind === kind);
    const labelled = changed.flatMap(({ after }) => (after && labelKey(after) !== null ? [after] : []));
    if (labelled.length === 0) continue;
    const touched = new Set(changed.map((entry) => entry.id));
    const others = (await kindTable(db, clubId, kind).live()).filter((record) => !touched.has(record.id));
    const taken = new Set(others.map(labelKey));
    for (const record of labelled) {
      const key = labelKey(record);
      if (taken.has(key)) {
        throw new Refusal(
          'conflict',
          'label',
          `The label of ${recordName(kind, record)} is taken; each needs one of its own.`,
        );
      }
      taken.add(key);
    }
  }
}

/** Every id that the change names belongs to a record that is there, or comes with the change itself. */
export async function checkNamed(db: Kysely<Tables>, clubId: string, entries: ChangeEntry[]): Promise<void> {
  const named = entries.flatMap(({ kind, after }) => (after ? referredBy(kind, after) : []));
  const coming = new Map(entries.map(({ kind, id, after }) => [`${kind} ${id}`, after !== null]));
  for (const kind of new Set(named.map(({ reference }) => reference.to))) {
    const ofKind = named.filter(({ reference }) => reference.to === kind);
    const ids = [...new Set(ofKind.map(({ id }) => id))];
    const there = new Set((await kindTable(db, clubId, kind).among(ids)).map((record) => record.id));
    const missing = ofKind.find(({ id }) => !(coming.get(`${kind} ${id}`) ?? there.has(id)));
    if (missing) {
      const { field, id } = missing;
      throw new Refusal(
        'invalid',
        field,
        `${field} is "${id}"; the club has no ${allKinds[kind].word} with that id.`,
      );
    }
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
        const instead = insteadOf[gone.kind] ?? '';
        const sentence = `The ${names[0]} cannot be removed: the ${names[1]} still uses it${instead}.`;
        throw new Refusal('conflict', '', sentence);
      }
    }
  }
}

/** After the change is written: no reading that it touches, by itself or by its pair's rest length, is of a slack loop. */
export async function checkTaut(db: Kysely<Tables>, clubId: string, entries: ChangeEntry[]): Promise<void> {
  const touched = entries.filter(({ kind }) => kind === 'bandReading' || kind === 'bandPair');
  if (touched.length === 0) return;
  const club = {
    bandPair: await kindTable(db, clubId, 'bandPair').live(),
    bandReading: await kindTable(db, clubId, 'bandReading').live(),
  };
  // Of a reading and a pair that come together, the sentence names the reading.
  for (const { before, after } of touched.toSorted((a, b) => b.kind.localeCompare(a.kind))) {
    const fault = after && slackFault(after, before, club);
    if (fault) throw new Refusal('invalid', fault.field, fault.message);
  }
}

/** Nothing was measured or done on a day that is still to come, or long before the club. */
export function checkHappened({ kind, before, after }: ChangeEntry, today: string): void {
  const fault = after && wrongDate(kind, after, before, today);
  if (fault) throw new Refusal('invalid', fault.field, fault.message);
}

/** What a coach can do with a record that has a past and therefore stays. */
const insteadOf: Partial<Record<KindName, string>> = {
  lifter: '; enter the day of leaving instead',
  bandPair: '; enter the day of its retirement instead',
};
