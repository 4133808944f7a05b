import type { Kysely } from 'kysely';
import type { Standing } from '#contract/changes/clubState.ts';
import type { Who } from '#contract/changes/who.ts';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import { askedOften } from './askedOften.ts';
import { momentAfter } from './moment.ts';
import { parseKept } from './parseKept.ts';
import type { ChangeRow, Tables } from './schema.ts';
import type { Writer } from './Writer.ts';

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

/** One step of the club's history. One that touches no record and no set says that a day was solved, or nothing differed. */
export interface Change {
  /** Counts 1, 2, 3 ... within the club. */
  seq: number;
  /** Instant, ISO 8601 in UTC; later than that of every change before, whatever the clock did. */
  madeAt: string;
  /** Null: made before changes knew. */
  who: Who | null;
  undoes: number | null;
  /** All that the club had was replaced. An older change that names nothing is taken for one that did. */
  replaced: boolean;
  entries: ChangeEntry[];
  sets: SetsChange | null;
}

/** What a new change did; what is left out it did not do. */
export type Done = Partial<Pick<Change, 'undoes' | 'replaced' | 'entries' | 'sets'>>;

/** Writes the next change at the end of the club's log. */
export async function appendChange(
  db: Kysely<Tables>,
  { clubId, who }: Writer,
  done: Done = {},
): Promise<Change> {
  const last = await latestStanding(db, clubId);
  const change: Change = {
    seq: last.seq + 1,
    madeAt: momentAfter(last.madeAt),
    who,
    undoes: null,
    replaced: false,
    entries: [],
    sets: null,
    ...done,
  };
  const { entries, sets, replaced, ...rest } = change;
  await insertChange(db, {
    ...rest,
    clubId,
    who: JSON.stringify(who),
    replaced: Number(replaced),
    entries: JSON.stringify(entries),
    sets: sets && JSON.stringify(sets),
  });
  return change;
}

const insertChange = askedOften(
  (db, { clubId, seq, madeAt, who, undoes, replaced, entries, sets }: ChangeRow) =>
    db.insertInto('change').values({ clubId, seq, madeAt, who, undoes, replaced, entries, sets }),
);

/** The club's last change. */
export async function latestStanding(db: Kysely<Tables>, clubId: string): Promise<Standing> {
  const [row] = await lastStanding(db, { clubId });
  return row ?? { seq: 0, madeAt: null };
}

const lastStanding = askedOften((db, { clubId }: { clubId: string }) =>
  db
    .selectFrom('change')
    .select(['seq', 'madeAt'])
    .where('clubId', '=', clubId)
    .orderBy('seq', 'desc')
    .limit(1),
);

/** Number of the club's last change; 0 before the first. */
export async function latestSeq(db: Kysely<Tables>, clubId: string): Promise<number> {
  return (await latestStanding(db, clubId)).seq;
}

/**
 * What tells one club put in the place of all that was there from another: the number of that change and when it was made. Empty
 * where that never was.
 */
export async function lastReplaced(db: Kysely<Tables>, clubId: string): Promise<string> {
  const row = await db
    .selectFrom('change')
    .select(['seq', 'madeAt'])
    .where('clubId', '=', clubId)
    .where('replaced', '=', 1)
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row ? `${row.seq} ${row.madeAt}` : '';
}

/** All changes of a club, to be narrowed and ordered by who asks. */
function changesOf(db: Kysely<Tables>, clubId: string) {
  return db.selectFrom('change').selectAll().where('clubId', '=', clubId);
}

/** The changes after a number, oldest first: what a client that knows that number has missed. */
export async function changesAfter(db: Kysely<Tables>, clubId: string, seq: number): Promise<Change[]> {
  const rows = await changesOf(db, clubId).where('seq', '>', seq).orderBy('seq').execute();
  return rows.map(toChange);
}

/**
 * At most so many of the changes after a number, oldest first, that touched a record of one of these kinds or put another club in the
 * place of all.
 */
export async function changesTouching(
  db: Kysely<Tables>,
  clubId: string,
  kinds: readonly KindName[],
  seq: number,
  most: number,
): Promise<Change[]> {
  const rows = await changesOf(db, clubId)
    .where('seq', '>', seq)
    // In the text of a record this would stand with its quotes escaped.
    .where((row) =>
      row.or([row('replaced', '=', 1), ...kinds.map((kind) => row('entries', 'like', `%"kind":"${kind}"%`))]),
    )
    .orderBy('seq')
    .limit(most)
    .execute();
  return rows.map(toChange);
}

/** Whether a change after a number touched any record or replaced the whole club. */
export async function touchesRecords(db: Kysely<Tables>, clubId: string, seq: number): Promise<boolean> {
  return (await touchingRecords(db, { clubId, seq })).length > 0;
}

const touchingRecords = askedOften((db, { clubId, seq }: Pick<ChangeRow, 'clubId' | 'seq'>) =>
  db
    .selectFrom('change')
    .select('seq')
    .where('clubId', '=', clubId)
    .where('seq', '>', seq)
    .where((eb) => eb.or([eb('entries', '!=', '[]'), eb('replaced', '=', 1)]))
    .limit(1),
);

/** The changes made after an instant, oldest first. */
export async function changesMadeAfter(
  db: Kysely<Tables>,
  clubId: string,
  instant: string,
): Promise<Change[]> {
  const rows = await changesOf(db, clubId).where('madeAt', '>', instant).orderBy('seq').execute();
  return rows.map(toChange);
}

/** The newest changes that touched a record, newest first, so far back as anybody may still have an older state of it on a screen. */
export async function recordChanges(
  db: Kysely<Tables>,
  clubId: string,
  kind: KindName,
  id: string,
): Promise<Change[]> {
  const rows = await changesOf(db, clubId)
    .where('entries', '!=', '[]')
    .orderBy('seq', 'desc')
    .limit(mostLookedAt)
    .execute();
  const touches = ({ entries }: Change) => entries.some((entry) => entry.kind === kind && entry.id === id);
  return rows.map(toChange).filter(touches);
}

/** The number of the change that put a set on record; where that is long ago, of the last change. */
export async function loggedBy(db: Kysely<Tables>, clubId: string, setId: string): Promise<number> {
  const rows = await changesOf(db, clubId)
    .where('sets', 'is not', null)
    .orderBy('seq', 'desc')
    .limit(mostLookedAt)
    .execute();
  const first = rows.map(toChange).findLast(({ sets }) => sets?.counts.includes(setId));
  return first?.seq ?? latestSeq(db, clubId);
}

const mostLookedAt = 500;

/** At most so many changes before a number, newest first; null: from the last one on. */
export async function changesBefore(
  db: Kysely<Tables>,
  clubId: string,
  seq: number | null,
  most: number,
): Promise<Change[]> {
  const all = changesOf(db, clubId);
  const earlier = seq === null ? all : all.where('seq', '<', seq);
  return (await earlier.orderBy('seq', 'desc').limit(most).execute()).map(toChange);
}

/** The last change that is such a one; null where there is none. */
export async function lastChange(
  db: Kysely<Tables>,
  clubId: string,
  isSuch: (change: Change) => boolean,
): Promise<Change | null> {
  for (let before: number | null = null; ; ) {
    const some: Change[] = await changesBefore(db, clubId, before, looked);
    const found = some.find(isSuch);
    if (found) return found;
    const last = some.at(-1);
    if (!last) return null;
    before = last.seq;
  }
}

const looked = 100;

/** Every change that took another back. */
export async function takingsOf(
  db: Kysely<Tables>,
  clubId: string,
): Promise<{ seq: number; undoes: number }[]> {
  const rows = await db
    .selectFrom('change')
    .select(['seq', 'undoes'])
    .where('clubId', '=', clubId)
    .where('undoes', 'is not', null)
    .execute();
  return rows.map(({ seq, undoes }) => ({ seq, undoes: undoes! }));
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

function toChange({ seq, madeAt, who, undoes, replaced, entries, sets }: ChangeRow): Change {
  return {
    seq,
    madeAt,
    who: who === null ? null : (parseKept(who) as Who),
    undoes,
    replaced: replaced === 1,
    entries: parseKept(entries) as ChangeEntry[],
    sets: sets === null ? null : toSetsChange(parseKept(sets) as SetsChange | FormerSetsChange),
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
