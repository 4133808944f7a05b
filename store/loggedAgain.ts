import type { Kysely } from 'kysely';
import { isSame } from '#contract/changes/mergeFields.ts';
import type { GivenSet, LoggedSet } from '#contract/records/loggedSet.ts';
import { Refusal } from './Refusal.ts';
import { readSet } from './readSets.ts';
import type { Tables } from './schema.ts';

/**
 * The set of the log that this one is, sent again by somebody who heard no answer: it bears the id that they gave it. Null where it
 * is new; refused where the log has another set by that id.
 */
export async function loggedAgain(
  db: Kysely<Tables>,
  clubId: string,
  field: string,
  { id, order, ...given }: GivenSet,
): Promise<LoggedSet | null> {
  const kept = id === undefined ? null : await readSet(db, clubId, id);
  if (kept === null) return null;
  const { id: _id, loggedAt: _at, struckAt: _struck, order: keptOrder, ...done } = kept;
  if (isSame(given, done) && (order === null || order === keptOrder)) return kept;
  const sentence = `${field} is "${id}"; the log has another set with that id. A set that is not sent again needs an id of its own.`;
  throw new Refusal('conflict', field, sentence);
}
