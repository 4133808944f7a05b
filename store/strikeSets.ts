import type { Kysely } from 'kysely';
import { byWhomSince } from './byWhomSince.ts';
import { appendChange, type Change, type SetsChange } from './changeLog.ts';
import { Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';
import type { Writer } from './Writer.ts';

/** Strikes a set or restores it; refused where it is so already. To be called within a transaction. */
export async function markSet(
  db: Kysely<Tables>,
  writer: Writer,
  id: string,
  did: 'struck' | 'restored',
): Promise<Change> {
  const [set] = await marksOf(db, writer.clubId, [id]);
  if (!set) throw new Refusal('missing', 'id', `The log has no set with the id "${id}".`);
  if ((set.struckAt !== null) === (did === 'struck')) {
    const sentence = did === 'struck' ? 'This set is struck already.' : 'This set is not struck; it counts.';
    throw new Refusal('conflict', 'id', sentence);
  }
  return turnSets(db, writer, did === 'struck' ? { counts: [], struck: [id] } : { counts: [id], struck: [] });
}

/** Takes back what a change did to the log: what counts since then is struck, what it struck counts again. */
export async function undoSets(
  db: Kysely<Tables>,
  writer: Writer,
  seq: number,
  { counts, struck }: SetsChange,
): Promise<Change> {
  return turnSets(db, writer, { counts: struck, struck: counts }, seq);
}

/** Why that cannot be done as things are, as one sentence; null: it can. */
export async function whySetsNotUndone(
  db: Kysely<Tables>,
  clubId: string,
  seq: number,
  { counts, struck }: SetsChange,
): Promise<string | null> {
  const counting = await marksOf(db, clubId, counts);
  const stricken = await marksOf(db, clubId, struck);
  const asLeft = [
    ...counting.filter(({ struckAt }) => struckAt === null),
    ...stricken.filter(({ struckAt }) => struckAt !== null),
  ];
  if (asLeft.length >= counts.length + struck.length) return null;
  const touched = new Set([...counts, ...struck]);
  const by = await byWhomSince(db, clubId, seq, ({ sets }) =>
    [...(sets?.counts ?? []), ...(sets?.struck ?? [])].some((id) => touched.has(id)),
  );
  return `This cannot be undone: a set that it touched was struck or restored since${by}.`;
}

/** Lets sets count and strikes others, as one change. To be called within a transaction. */
export async function turnSets(
  db: Kysely<Tables>,
  writer: Writer,
  sets: SetsChange,
  undoes: number | null = null,
): Promise<Change> {
  const appended = await appendChange(db, writer, { sets, undoes });
  await mark(db, writer.clubId, sets.counts, null);
  await mark(db, writer.clubId, sets.struck, appended.madeAt);
  return appended;
}

async function mark(
  db: Kysely<Tables>,
  clubId: string,
  ids: string[],
  struckAt: string | null,
): Promise<void> {
  for (const portion of inPortions(ids)) {
    await db
      .updateTable('loggedSet')
      .set({ struckAt })
      .where('clubId', '=', clubId)
      .where('id', 'in', portion)
      .execute();
  }
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
