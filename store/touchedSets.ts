import type { Kysely } from 'kysely';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { latestSeq } from './changeLog.ts';
import type { NewestChanges } from './newestChanges.ts';
import type { Tables } from './schema.ts';

/** A set that was logged, struck or restored since a change. */
export interface TouchedSet {
  /** As it now is. */
  set: LoggedSet;
  /** Whether it counted when that change was made. */
  counted: boolean;
}

/**
 * The sets that were touched after a change, those of lifters who are gone too, and the change up to which that is. To be called within
 * one reading. Null where the club was replaced since, or so much was
 * done that the whole log is read at little more cost.
 */
export async function touchedSets(
  db: Kysely<Tables>,
  clubId: string,
  newest: NewestChanges,
  seq: number,
): Promise<{ seq: number; sets: TouchedSet[] } | null> {
  if ((await latestSeq(db, clubId)) - seq > mostChanges) return null;
  const changes = await newest.after(db, seq);
  if (changes.some(({ replaced }) => replaced)) return null;
  // What a change struck counted until then, and the other way round: the first that touched a set tells how it stood.
  const counted = new Map<string, boolean>();
  for (const { sets } of changes) {
    for (const id of sets?.struck ?? []) if (!counted.has(id)) counted.set(id, true);
    for (const id of sets?.counts ?? []) if (!counted.has(id)) counted.set(id, false);
  }
  if (counted.size > mostSets) return null;
  const sets = await newest.setsOf(db, changes);
  return {
    seq: changes.at(-1)?.seq ?? seq,
    sets: sets.map((set) => ({ set, counted: counted.get(set.id)! })),
  };
}

/** An evening's of a crowd. */
const mostChanges = 2000;
const mostSets = 2000;
