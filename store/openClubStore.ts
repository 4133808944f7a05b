import { EventEmitter } from 'node:events';
import type { Kysely, Transaction } from 'kysely';
import {
  allKinds,
  type ClubRecords,
  type KindName,
  kindNames,
  type RecordOf,
} from '#contract/records/allKinds.ts';
import type { ClubStore } from './ClubStore.ts';
import { appendChange, changesAfter, latestSeq } from './changeLog.ts';
import { checkShape } from './checks.ts';
import { clubToday } from './clubToday.ts';
import { commitChange } from './commitChange.ts';
import { correctSets } from './correctSets.ts';
import { kindTable } from './kindTable.ts';
import { logMarks } from './logMarks.ts';
import { checkSets, logSets } from './logSets.ts';
import { migrate } from './migrate.ts';
import { newId } from './newId.ts';
import { openSqlite } from './open/sqlite.ts';
import { allPrescriptions, appendPrescription, latestPrescription, prescriptionOf } from './prescriptions.ts';
import { Refusal } from './Refusal.ts';
import { archivedSets, bandReps, formerGear, readSets } from './readSets.ts';
import { removal } from './removal.ts';
import { replaceClub } from './replaceClub.ts';
import type { Tables } from './schema.ts';
import { markSet } from './strikeSets.ts';
import { undoChange } from './undoChange.ts';

/** Opens the club's file, brings its tables up to date and, in a new file, founds a club without a name of its own yet. */
export async function openClubStore(path: string): Promise<ClubStore> {
  const db = openSqlite(path);
  try {
    await migrate(db);
    await foundClub(db);
  } catch (error) {
    await db.destroy();
    throw error;
  }
  return clubStore(db, path);
}

/** The key of the one club in a file of its own; a database shared by several clubs gives each its key. */
const clubId = 'club';

async function foundClub(db: Kysely<Tables>): Promise<void> {
  if ((await kindTable(db, clubId, 'club').live()).length > 0) return;
  await kindTable(db, clubId, 'club').put(checkShape('club', { id: newId(), name: 'Our club' }));
}

function clubStore(db: Kysely<Tables>, path: string): ClubStore {
  const changes = new EventEmitter<{ change: [seq: number] }>().setMaxListeners(0);

  /** Runs a write in a transaction of its own and tells the listeners once it is on the disk. */
  async function write<T extends { seq: number }>(
    work: (trx: Transaction<Tables>) => Promise<T>,
  ): Promise<T> {
    const done = await db.transaction().execute(work);
    changes.emit('change', done.seq);
    return done;
  }

  /** Reads everything as it stood at one moment, whoever writes meanwhile. */
  function read<T>(work: (trx: Transaction<Tables>) => Promise<T>): Promise<T> {
    return db.transaction().setAccessMode('read only').execute(work);
  }

  async function markOne(id: string, did: 'struck' | 'restored'): Promise<{ seq: number }> {
    const { seq } = await write((trx) => markSet(trx, clubId, id, did));
    return { seq };
  }

  return {
    path,
    list: (kind) => kindTable(db, clubId, kind).live(),
    get: (kind, id) => kindTable(db, clubId, kind).one(id),
    create: (kind, fields) =>
      write(async (trx) => {
        const record = checkShape(kind, { ...fields, id: newId() });
        return { record, seq: await put(trx, kind, [record]) };
      }),
    update: (kind, id, fields) =>
      write(async (trx) => {
        await found(trx, kind, id);
        const record = checkShape(kind, { ...fields, id });
        return { record, seq: await put(trx, kind, [record]) };
      }),
    remove: (kind, id) =>
      write(async (trx) => {
        await found(trx, kind, id);
        const { seq } = await commitChange(trx, clubId, await removal(trx, clubId, kind, [id]));
        return { seq };
      }),
    putAll: (kind, records) => write(async (trx) => ({ seq: await put(trx, kind, records) })),

    today: () => clubToday(db, clubId),
    records: () =>
      read(async (trx) => ({ records: await allRecords(trx), seq: await latestSeq(trx, clubId) })),
    importRecords: (records, rest = {}) =>
      write((trx) => replaceClub(trx, clubId, { prescriptions: [], sets: [], former: [], ...rest, records })),

    logSets: async (given) => {
      const sets = checkSets(given);
      return write((trx) => logSets(trx, clubId, sets));
    },
    strikeSet: (id) => markOne(id, 'struck'),
    restoreSet: (id) => markOne(id, 'restored'),
    correctSets: (corrections) => write((trx) => correctSets(trx, clubId, corrections)),
    loggedSets: (filter = {}) => readSets(db, clubId, filter),
    logMarks: (lifterId) => logMarks(db, clubId, lifterId),
    bandReps: () => bandReps(db, clubId),
    formerGear: (sets) => formerGear(db, clubId, sets),

    undo: (seq) => write((trx) => undoChange(trx, clubId, seq)),
    latestSeq: () => latestSeq(db, clubId),
    changesAfter: (seq) => changesAfter(db, clubId, seq),
    onChange(listener) {
      changes.on('change', listener);
      return () => changes.off('change', listener);
    },

    async addPrescription(dayId, solvedAt, document) {
      const { added } = await write(async (trx) => {
        await found(trx, 'day', dayId);
        const added = await appendPrescription(trx, clubId, dayId, solvedAt, document);
        const { seq } = await appendChange(trx, clubId, []);
        return { added, seq };
      });
      return added;
    },
    latestPrescription: (dayId) => latestPrescription(db, clubId, dayId),
    prescription: (dayId, number) => prescriptionOf(db, clubId, dayId, number),
    snapshot: () =>
      read(async (trx) => {
        const sets = await archivedSets(trx, clubId);
        return {
          records: await allRecords(trx),
          prescriptions: await allPrescriptions(trx, clubId),
          sets,
          former: await formerGear(trx, clubId, sets),
        };
      }),

    close: () => db.destroy(),
  };
}

/** Puts records in as one change, and gives its number. */
async function put<K extends KindName>(
  trx: Transaction<Tables>,
  kind: K,
  records: RecordOf<K>[],
): Promise<number> {
  const edits = records.map((after) => ({ kind, id: after.id, after }));
  return (await commitChange(trx, clubId, edits)).seq;
}

/** Refuses when the club has no such record. */
async function found(db: Kysely<Tables>, kind: KindName, id: string): Promise<void> {
  if (await kindTable(db, clubId, kind).one(id)) return;
  throw new Refusal('missing', 'id', `The club has no ${allKinds[kind].word} with the id "${id}".`);
}

async function allRecords(db: Kysely<Tables>): Promise<ClubRecords> {
  const lists: Partial<Record<KindName, unknown>> = {};
  for (const kind of kindNames) lists[kind] = await kindTable(db, clubId, kind).live();
  return lists as ClubRecords;
}
