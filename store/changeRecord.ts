import type { Kysely } from 'kysely';
import { type Clash, type Fields, isSame, mergeFields } from '#contract/changes/mergeFields.ts';
import { allKinds, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import { recordName } from '#contract/records/recordName.ts';
import type { FoundAndWanted, Kept } from './ClubStore.ts';
import { type Change, recordChanges } from './changeLog.ts';
import { checkShape } from './checks.ts';
import { commitChange } from './commitChange.ts';
import { kindTable } from './kindTable.ts';
import { ClashRefusal, Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';
import type { Writer } from './Writer.ts';

/**
 * Changes fields of a record that somebody found in one state and wants in another. What others changed since stays, field by field;
 * where they changed the same, nothing is written and the refusal says what. `see` is what the writer may read of a record. To be called
 * within a transaction.
 */
export async function changeRecord<K extends KindName>(
  db: Kysely<Tables>,
  writer: Writer,
  kind: K,
  id: string,
  { found, wanted }: FoundAndWanted,
  see: (record: RecordOf<K>) => RecordOf<K> | null,
): Promise<Kept<K>> {
  checkNamed(found, wanted);
  const theirs = await kindTable(db, writer.clubId, kind).one(id);
  const shown = theirs && see(theirs);
  if (!theirs || !shown) throw await gone(db, writer.clubId, kind, id);
  const { merged, clashes } = mergeFields(found, theirs, wanted, 'theirs');
  if (clashes.length > 0) {
    const seen = mergeFields(found, shown, wanted, 'theirs').clashes;
    const hidden = clashes.map(({ path, yours }) => ({ path, yours }));
    throw await clash(db, writer.clubId, kind, shown, seen.length > 0 ? seen : hidden);
  }
  const after = checkShape(kind, { ...theirs, ...merged });
  const { seq } = await commitChange(db, writer, [{ kind, id, after }]);
  return { record: see(after) ?? shown, seq };
}

/** A change names the same fields twice, as they were found and as they are wanted; never the id. */
function checkNamed(found: Fields, wanted: Fields): void {
  const missing = Object.keys(wanted).find((name) => !Object.hasOwn(found, name));
  const idle = Object.keys(found).find((name) => !Object.hasOwn(wanted, name));
  if (Object.hasOwn(wanted, 'id')) {
    throw new Refusal('invalid', 'wanted.id', 'wanted names the id; a record keeps the id that it has.');
  }
  if (missing !== undefined) {
    const sentence = `found.${missing} is missing; it must say what ${missing} was before it is changed.`;
    throw new Refusal('invalid', `found.${missing}`, sentence);
  }
  if (idle !== undefined) {
    const sentence = `wanted.${idle} is missing; it must say what ${idle} is to be, or found must leave it out.`;
    throw new Refusal('invalid', `wanted.${idle}`, sentence);
  }
}

async function gone(db: Kysely<Tables>, clubId: string, kind: KindName, id: string): Promise<Refusal> {
  const { word } = allKinds[kind];
  const last = (await recordChanges(db, clubId, kind, id)).at(0);
  const removed = last?.entries.find((entry) => entry.kind === kind && entry.id === id);
  if (!last || !removed?.before) {
    return new Refusal('missing', 'id', `The club has no ${word} with the id "${id}".`);
  }
  const name = recordName(kind, removed.before);
  return new Refusal('missing', 'id', `The ${name} was removed meanwhile${by(last)}; nothing was changed.`);
}

async function clash<K extends KindName>(
  db: Kysely<Tables>,
  clubId: string,
  kind: K,
  theirs: RecordOf<K>,
  clashes: readonly Clash[],
): Promise<Refusal> {
  const [first] = clashes;
  const field = first!.path.join('.');
  const name = first!.path[0]!;
  const changes = await recordChanges(db, clubId, kind, theirs.id);
  const last = changes.find(({ entries }) =>
    entries.some(
      (entry) =>
        entry.kind === kind &&
        entry.id === theirs.id &&
        !isSame(Reflect.get(entry.before ?? {}, name), Reflect.get(entry.after ?? {}, name)),
    ),
  );
  const what = `${field} of the ${recordName(kind, theirs)} was changed meanwhile${last ? by(last) : ''}`;
  const sentence = `${what}, ${told('to', first!.theirs)}; what was sent ${told('is', first!.yours)}. Nothing was changed.`;
  const fields = [...clashes];
  return new ClashRefusal(field, sentence, { record: theirs, who: last?.who ?? null, fields });
}

function by({ who }: Change): string {
  return who ? ` by ${who.name}` : '';
}

/** A short value in words; a long one would hide the sentence. */
function told(word: string, value: unknown): string {
  if (value === undefined) return word === 'to' ? 'and is gone' : 'takes it away';
  const text = JSON.stringify(value);
  return text.length > longestTold ? (word === 'to' ? 'to something else' : 'differs') : `${word} ${text}`;
}

const longestTold = 60;
