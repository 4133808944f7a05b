import type { Kysely } from 'kysely';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import type { ChangeRow, Tables } from './schema.ts';

/** What a change did to one record: null before is a new one, null after a removed one. */
export interface ChangeEntry<K extends KindName = KindName> {
  kind: K;
  id: string;
  before: RecordOf<K> | null;
  after: RecordOf<K> | null;
}

/** What a change did to the log: which sets count from then on, new or restored, and which no longer do. */
export interface SetsChange {
  counts: string[];
  struck: string[];
}

/**
 * One step of the club's history. A change without entries and sets says that all was replaced, a day was solved, or nothing
 * differed.
 */
export interface Change {
  /** Counts 1, 2, 3 ... within the club. */
  seq: number;
  /** Instant, ISO 8601 in UTC. */
  madeAt: string;
  undoes: number | null;
  entries: ChangeEntry[];
  sets: SetsChange | null;
}

/** Writes the next change at the end of the club's log. */
export async function appendChange(
  db: Kysely<Tables>,
  clubId: string,
  entries: ChangeEntry[],
  undoes: number | null = null,
  sets: SetsChange | null = null,
): Promise<Change> {
  const change = {
    seq: (await latestSeq(db, clubId)) + 1,
    madeAt: new Date().toISOString(),
    undoes,
    entries,
    sets,
  };
  await db
    .insertInto('change')
    .values({ ...change, clubId, entries: JSON.stringify(entries), sets: sets && JSON.stringify(sets) })
    .execute();
  return change;
}

/** Number of the club's last change; 0 before the first. */
export async function latestSeq(db: Kysely<Tables>, clubId: string): Promise<number> {
  const row = await db
    .selectFrom('change')
    .select((eb) => eb.fn.max('seq').as('seq'))
    .where('clubId', '=', clubId)
    .executeTakeFirst();
  return row?.seq ?? 0;
}

/** The changes after a number, oldest first: what a client that knows that number has missed. */
export async function changesAfter(db: Kysely<Tables>, clubId: string, seq: number): Promise<Change[]> {
  const rows = await db
    .selectFrom('change')
    .selectAll()
    .where('clubId', '=', clubId)
    .where('seq', '>', seq)
    .orderBy('seq')
    .execute();
  return rows.map(toChange);
}

export async function changeAt(db: Kysely<Tables>, clubId: string, seq: number): Promise<Change | null> {
  const row = await db
    .selectFrom('change')
    .selectAll()
    .where('clubId', '=', clubId)
    .where('seq', '=', seq)
    .executeTakeFirst();
  return row ? toChange(row) : null;
}

function toChange({ seq, madeAt, undoes, entries, sets }: ChangeRow): Change {
  return {
    seq,
    madeAt,
    undoes,
    entries: JSON.parse(entries) as ChangeEntry[],
    sets: sets === null ? null : toSetsChange(JSON.parse(sets) as SetsChange | FormerSetsChange),
  };
}

/** As it was written before one change could do both. */
interface FormerSetsChange {
  did: 'logged' | 'struck' | 'restored';
  ids: string[];
}

function toSetsChange(kept: SetsChange | FormerSetsChange): SetsChange {
  if (!('did' in kept)) return kept;
  return kept.did === 'struck' ? { counts: [], struck: kept.ids } : { counts: kept.ids, struck: [] };
}
