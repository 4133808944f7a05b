import type { Kysely } from 'kysely';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { type Change, changesAfter } from './changeLog.ts';
import { setsByIds } from './readSets.ts';
import type { Tables } from './schema.ts';

/** What was done to a club last, and the sets that it touched. To be asked within one reading. */
export interface NewestChanges {
  /** The changes after a number, oldest first. */
  after(db: Kysely<Tables>, seq: number): Promise<Change[]>;
  /** The sets that these changes touched, as they now are. The changes are all after some number. */
  setsOf(db: Kysely<Tables>, changes: readonly Change[]): Promise<LoggedSet[]>;
}

/**
 * Keeps both in memory: sixty screens ask for the same few one after the other. A change that was made stays as it is, and a set is read
 * again when a change has touched it.
 */
export function newestChanges(clubId: string): NewestChanges {
  let kept: Change[] = [];
  const sets = new Map<string, { set: LoggedSet; seq: number }>();

  return {
    async after(db, seq) {
      const [first] = kept;
      const last = kept.at(-1);
      if (first === undefined || last === undefined || seq < first.seq - 1) {
        const all = await changesAfter(db, clubId, seq);
        kept = all.slice(-mostChanges);
        return all;
      }
      kept = [...kept, ...(await changesAfter(db, clubId, last.seq))].slice(-mostChanges);
      return kept.filter((change) => change.seq > seq);
    },
    async setsOf(db, changes) {
      const touchedBy = new Map<string, number>();
      for (const { seq, sets } of changes)
        for (const id of sets ? [...sets.struck, ...sets.counts] : []) touchedBy.set(id, seq);
      const due = [...touchedBy].flatMap(([id, by]) => ((sets.get(id)?.seq ?? 0) < by ? [id] : []));
      const seq = changes.at(-1)?.seq ?? 0;
      for (const set of await setsByIds(db, clubId, due)) {
        sets.delete(set.id);
        sets.set(set.id, { set, seq });
      }
      const found = [...touchedBy.keys()].flatMap((id) => sets.get(id)?.set ?? []);
      for (const id of sets.keys()) {
        if (sets.size <= mostSets) break;
        sets.delete(id);
      }
      return found;
    },
  };
}

/** Some seconds of a crowd. */
const mostChanges = 500;
const mostSets = 2000;
