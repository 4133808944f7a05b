import type { Kysely } from 'kysely';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import { askedOften } from './askedOften.ts';
import { recordOf, rowOf } from './rows.ts';
import type { Cell, RowBase, RowOf, Tables } from './schema.ts';

/** The table of one kind within one club: the only place that reads and writes rows of records. */
export interface KindTable<K extends KindName> {
  /** The records that the club has, in the order of their ids. */
  live(): Promise<RecordOf<K>[]>;
  one(id: string): Promise<RecordOf<K> | null>;
  /** Those among these ids that the club has. */
  among(ids: string[]): Promise<RecordOf<K>[]>;
  /** The same by their ids alone, for who asks no more than whether they are there. */
  idsAmong(ids: string[]): Promise<string[]>;
  /** Those among these ids that the club had and removed. */
  removedAmong(ids: string[]): Promise<RecordOf<K>[]>;
  /** Keeps the record; `removedSeq` says by which change it was removed, if it was. */
  put(record: RecordOf<K>, removedSeq?: number): Promise<void>;
  markRemoved(id: string, seq: number): Promise<void>;
  /** Takes every row of the club out for good, removed ones too: only before a whole club is put in. */
  empty(): Promise<void>;
}

export function kindTable<K extends KindName>(
  tables: Kysely<Tables>,
  clubId: string,
  kindName: K,
): KindTable<K> {
  // Which columns a kind has is known to its shape, not to the query: here all tables look alike.
  const db = tables as unknown as Kysely<Record<KindName, AnyRow>>;
  const table: KindName = kindName;
  const all = () => db.selectFrom(table).selectAll().where('clubId', '=', clubId);
  const live = () => all().where('removedSeq', 'is', null);
  const removed = () => all().where('removedSeq', 'is not', null);
  const toRecord = (row: unknown) => recordOf(kindName, row as RowOf<K>);
  async function among(rows: ReturnType<typeof all>, ids: string[]): Promise<RecordOf<K>[]> {
    const found: RecordOf<K>[] = [];
    for (let i = 0; i < ids.length; i += idsInOneQuery) {
      const some = await rows.where('id', 'in', ids.slice(i, i + idsInOneQuery)).execute();
      found.push(...some.map(toRecord));
    }
    return found;
  }
  const there = thereIn(table);
  return {
    async live() {
      return (await live().orderBy('id').execute()).map(toRecord);
    },
    async one(id) {
      const row = await live().where('id', '=', id).executeTakeFirst();
      return row ? toRecord(row) : null;
    },
    among: (ids) => among(live(), ids),
    async idsAmong(ids) {
      const found: string[] = [];
      for (const id of ids) if ((await there(tables, { clubId, id })).length > 0) found.push(id);
      return found;
    },
    removedAmong: (ids) => among(removed(), ids),
    async put(record, removedSeq) {
      const row = rowOf(clubId, kindName, record, removedSeq ?? null) as unknown as AnyRow;
      await db
        .insertInto(table)
        .values(row)
        .onConflict((conflict) => conflict.columns(['clubId', 'id']).doUpdateSet(row))
        .execute();
    },
    async markRemoved(id, seq) {
      await db
        .updateTable(table)
        .set({ removedSeq: seq })
        .where('clubId', '=', clubId)
        .where('id', '=', id)
        .execute();
    },
    async empty() {
      await db.deleteFrom(table).where('clubId', '=', clubId).execute();
    },
  };
}

type AnyRow = RowBase & { [column: string]: Cell };

/** Asked for each record that a set names: the queries of `idsAmong` by kind. */
const spelled = new Map<KindName, ReturnType<typeof askedForOne>>();

function thereIn(kind: KindName) {
  const known = spelled.get(kind) ?? askedForOne(kind);
  spelled.set(kind, known);
  return known;
}

function askedForOne(kind: KindName) {
  return askedOften((db, { clubId, id }: Pick<RowBase, 'clubId' | 'id'>) =>
    (db as unknown as Kysely<Record<KindName, AnyRow>>)
      .selectFrom(kind)
      .select('id')
      .where('clubId', '=', clubId)
      .where('id', '=', id)
      .where('removedSeq', 'is', null),
  );
}

/** Well below what any database allows as parameters of one query. */
const idsInOneQuery = 500;
