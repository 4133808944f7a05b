import type { Kysely } from 'kysely';
import { appendChange, type Change, type SetsChange } from './changeLog.ts';
import { Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';

/** Strikes a set or restores it; refused where it is so already. To be called within a transaction. */
export async function markSet(
  db: Kysely<Tables>,
  clubId: string,
  id: string,
  did: 'struck' | 'restored',
): Promise<Change> {
  const [set] = await marksOf(db, clubId, [id]);
  if (!set) throw new Refusal('missing', 'id', `The log has no set with the id "${id}".`);
  if ((set.struckAt !== null) === (did === 'struck')) {
    const sentence = did === 'struck' ? 'This set is struck already.' : 'This set is not struck; it counts.';
    throw new Refusal('conflict', 'id', sentence);
  }
  return mark(db, clubId, { did, ids: [id] }, null);
}

/** Takes back what a change did to the log: what it logged or restored is struck, what it struck is restored. */
export async function undoSets(
  db: Kysely<Tables>,
  clubId: string,
  seq: number,
  { did, ids }: SetsChange,
): Promise<Change> {
  const now = await marksOf(db, clubId, ids);
  const asLeft = now.filter(({ struckAt }) => (struckAt !== null) === (did === 'struck'));
  if (asLeft.length < ids.length) {
    const sentence = 'This cannot be undone: a set that it touched was struck or restored since.';
    throw new Refusal('conflict', 'seq', sentence);
  }
  return mark(db, clubId, { did: did === 'struck' ? 'restored' : 'struck', ids }, seq);
}

async function mark(
  db: Kysely<Tables>,
  clubId: string,
  change: SetsChange,
  undoes: number | null,
): Promise<Change> {
  const appended = await appendChange(db, clubId, [], undoes, change);
  const struckAt = change.did === 'struck' ? appended.madeAt : null;
  for (const ids of inPortions(change.ids)) {
    await db
      .updateTable('loggedSet')
      .set({ struckAt })
      .where('clubId', '=', clubId)
      .where('id', 'in', ids)
      .execute();
  }
  return appended;
}

async function marksOf(db: Kysely<Tables>, clubId: string, ids: string[]) {
  const marks: { struckAt: string | null }[] = [];
  for (const portion of inPortions(ids)) {
    const query = db.selectFrom('loggedSet').select('struckAt').where('clubId', '=', clubId);
    marks.push(...(await query.where('id', 'in', portion).execute()));
  }
  return marks;
}

/** Well below what any database allows as parameters of one query. */
const idsInOneQuery = 500;

function inPortions(ids: string[]): string[][] {
  const count = Math.ceil(ids.length / idsInOneQuery);
  return Array.from({ length: count }, (_, i) => ids.slice(i * idsInOneQuery, (i + 1) * idsInOneQuery));
}
