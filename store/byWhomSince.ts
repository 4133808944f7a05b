import type { Kysely } from 'kysely';
import { type Change, changesAfter } from './changeLog.ts';
import type { Tables } from './schema.ts';

/** Who made the last of the changes after `seq` that `touches`, as the end of a sentence: " by the coach". Empty where it is not known. */
export async function byWhomSince(
  db: Kysely<Tables>,
  clubId: string,
  seq: number,
  touches: (change: Change) => boolean,
): Promise<string> {
  const last = (await changesAfter(db, clubId, seq)).findLast(touches);
  return last?.who ? ` by ${last.who.name}` : '';
}
