import type { Kysely } from 'kysely';
import { z } from 'zod';
import { type Named, namedBySet } from '#contract/log/namedBySet.ts';
import { allKinds } from '#contract/records/allKinds.ts';
import { type GivenSet, givenSet, type LoggedSet, mostInDay } from '#contract/records/loggedSet.ts';
import { wrongDateSentence } from '#contract/records/wrongDateSentence.ts';
import { askedOften } from './askedOften.ts';
import { asShaped } from './asShaped.ts';
import type { Given } from './ClubStore.ts';
import { appendChange, loggedBy } from './changeLog.ts';
import { clubToday } from './clubToday.ts';
import { kindTable } from './kindTable.ts';
import { loggedAgain } from './loggedAgain.ts';
import { newId } from './newId.ts';
import { Refusal } from './Refusal.ts';
import type { LoggedSetRow, Tables } from './schema.ts';
import { setsWriter } from './setsWriter.ts';
import type { Writer } from './Writer.ts';

/** Sets as their shape reads them, defaults filled in; refused with the first field that is wrong. */
export function checkSets(given: readonly Given[]): GivenSet[] {
  return asShaped(someSets, { sets: given }).sets;
}

const someSets = z.strictObject({ sets: z.array(givenSet).min(1) });

/**
 * Adds sets at the end of the log, all of them as one change or none; those that are there already, sent again, stay as they are. To be
 * called within a transaction.
 */
export async function logSets(
  db: Kysely<Tables>,
  writer: Writer,
  given: readonly GivenSet[],
): Promise<{ sets: LoggedSet[]; seq: number }> {
  const { clubId } = writer;
  checkOnce(given);
  const there: (LoggedSet | null)[] = [];
  for (const [i, set] of given.entries()) there.push(await loggedAgain(db, clubId, `sets[${i}].id`, set));
  const isNew = (_: unknown, i: number) => there[i] === null;
  const named = given.flatMap((set, i) =>
    there[i] ? [] : namedBySet(set).map((one) => ({ ...one, field: `sets[${i}].${one.field}` })),
  );
  await checkThere(named, (kind, ids) => kindTable(db, clubId, kind).idsAmong(ids));
  const today = await clubToday(db, clubId);
  given.forEach(({ doneOn }, i) => {
    if (there[i] === null) checkDone(`sets[${i}].doneOn`, doneOn, today);
  });
  const added = await addSets(db, clubId, given.filter(isNew));
  const counts = added.map(({ id }) => id);
  const inPlace = added.values();
  const sets = there.map((kept) => kept ?? inPlace.next().value!);
  const seq =
    counts.length === 0
      ? await loggedBy(db, clubId, sets[0]!.id)
      : (await appendChange(db, writer, { sets: { counts, struck: [] } })).seq;
  return { sets, seq };
}

function checkOnce(given: readonly GivenSet[]): void {
  const seen = new Set<string>();
  for (const [i, { id }] of given.entries()) {
    if (id !== undefined && seen.has(id)) {
      const field = `sets[${i}].id`;
      throw new Refusal(
        'invalid',
        field,
        `${field} is "${id}", as of a set before it; each needs one of its own.`,
      );
    }
    if (id !== undefined) seen.add(id);
  }
}

/** No set was done on a day that is still to come, or long before the club. */
export function checkDone(field: string, doneOn: string, today: string): void {
  const sentence = wrongDateSentence(field, doneOn, today);
  if (sentence !== null) throw new Refusal('invalid', field, sentence);
}

/** Writes new sets at the end of the log; the change that tells of them is the caller's. */
export async function addSets(
  db: Kysely<Tables>,
  clubId: string,
  given: readonly GivenSet[],
): Promise<LoggedSet[]> {
  const loggedAt = new Date().toISOString();
  const inOrder = await ordered(db, clubId, given);
  const sets = inOrder.map((set): LoggedSet => ({ ...set, id: set.id ?? newId(), loggedAt, struckAt: null }));
  const written = await setsWriter(db, clubId)(sets);
  if (written < sets.length) throw new Error('A new set bears the id of one that the log has.');
  return sets;
}

/** Refuses when a record that is named is not among those whose ids `find` gives. */
export async function checkThere(
  named: readonly Named[],
  find: (kind: Named['kind'], ids: string[]) => Promise<string[]>,
): Promise<void> {
  for (const kind of new Set(named.map((one) => one.kind))) {
    const ofKind = named.filter((one) => one.kind === kind);
    const ids = [...new Set(ofKind.map(({ id }) => id))];
    const there = new Set(await find(kind, ids));
    const missing = ofKind.find(({ id }) => !there.has(id));
    if (!missing) continue;
    const { field, id } = missing;
    const sentence = `${field} is "${id}"; the club has no ${allKinds[kind].word} with that id.`;
    throw new Refusal('invalid', field, sentence);
  }
}

/** Sets given without an order come after those that the lifter has done on that day. */
async function ordered(db: Kysely<Tables>, clubId: string, sets: readonly GivenSet[]) {
  const lastOf = new Map<string, number>();
  const inOrder = [];
  for (const set of sets) {
    const key = `${set.lifterId} ${set.doneOn}`;
    const last = lastOf.get(key) ?? (set.order === null ? await lastOrder(db, clubId, set) : 0);
    const order = set.order ?? last + 1;
    if (order > mostInDay) {
      const sentence = `The log has ${mostInDay} sets of this lifter on ${set.doneOn}; no more can be of one day.`;
      throw new Refusal('invalid', 'doneOn', sentence);
    }
    lastOf.set(key, Math.max(last, order));
    inOrder.push({ ...set, order });
  }
  return inOrder;
}

async function lastOrder(
  db: Kysely<Tables>,
  clubId: string,
  { lifterId, doneOn }: GivenSet,
): Promise<number> {
  const [row] = await lastOrderOf(db, { clubId, lifterId, doneOn });
  return row?.order ?? 0;
}

const lastOrderOf = askedOften(
  (db, { clubId, lifterId, doneOn }: Pick<LoggedSetRow, 'clubId' | 'lifterId' | 'doneOn'>) =>
    db
      .selectFrom('loggedSet')
      .select((eb) => eb.fn.max('order').as('order'))
      .where('clubId', '=', clubId)
      .where('lifterId', '=', lifterId)
      .where('doneOn', '=', doneOn),
);
