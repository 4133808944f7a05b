import type { EventEmitter } from 'node:events';
import type { Kysely, Transaction } from 'kysely';
import { type ArchiveContent, nothingBeside } from '#contract/archive/archiveContent.ts';
import { lookOf } from '#contract/archive/archiveLook.ts';
import {
  allKinds,
  type ClubRecords,
  type KindName,
  kindNames,
  type RecordOf,
} from '#contract/records/allKinds.ts';
import type { ClubStore } from './ClubStore.ts';
import {
  appendChange,
  changesAfter,
  changesMadeAfter,
  changesTouching,
  lastChange,
  lastReplaced,
  latestSeq,
  latestStanding,
} from './changeLog.ts';
import { changeRecord } from './changeRecord.ts';
import { changesSince } from './changesSince.ts';
import { checkShape } from './checks.ts';
import { clubToday } from './clubToday.ts';
import { commitChange } from './commitChange.ts';
import { correctSets } from './correctSets.ts';
import { countLists } from './countLists.ts';
import { keptRecords } from './keptRecords.ts';
import { kindTable } from './kindTable.ts';
import { logMarks } from './logMarks.ts';
import { logDays, setsPage } from './logPages.ts';
import type { SetFilter } from './logQuery.ts';
import { checkSets, logSets } from './logSets.ts';
import type { MayRead } from './mayRead.ts';
import { newestChanges } from './newestChanges.ts';
import { newId } from './newId.ts';
import type { Database } from './open/Database.ts';
import { allPrescriptions, appendPrescription, keptPrescriptions, prescriptionOf } from './prescriptions.ts';
import { Refusal } from './Refusal.ts';
import { archivedSets, bandReps, formerGear, formerGearOfLog, hasSets, readSets } from './readSets.ts';
import { removal } from './removal.ts';
import { replaceClub } from './replaceClub.ts';
import type { Tables } from './schema.ts';
import { seenBy } from './seenBy.ts';
import { markSet } from './strikeSets.ts';
import { swapClub } from './swapClub.ts';
import { allTakenPlans, appendTakenPlan, takenHeads, takenPlanOf } from './takenPlans.ts';
import { takeSetsIn } from './takeSetsIn.ts';
import { type TouchedSet, touchedSets } from './touchedSets.ts';
import { undoChange } from './undoChange.ts';
import type { Writer } from './Writer.ts';
import { whatWasDone } from './whatWasDone.ts';

/** Tells everybody in a house that a club was changed. */
export type ChangeNews = EventEmitter<{ change: [clubId: string, seq: number] }>;

/** One club of a database as one person keeps it. What it gives out of what is kept has passed `rule`. */
export function storeOfClub(database: Database, writer: Writer, news: ChangeNews, rule: MayRead): ClubStore {
  const { db, path, mark, trouble, stopWriting, behindWrites, read, writeBeside } = database;
  const { clubId, who } = writer;
  const seen = seenBy(who, rule);

  /** Tells the listeners of a change once it is on the disk. */
  async function told<T extends { seq: number }>(change: Promise<T>): Promise<T> {
    const done = await change;
    news.emit('change', clubId, done.seq);
    return done;
  }

  /** Runs a write in a transaction of its own. */
  const write = <T extends { seq: number }>(work: (trx: Transaction<Tables>) => Promise<T>) =>
    told(database.write(clubId, work));

  async function put<K extends KindName>(
    trx: Transaction<Tables>,
    kind: K,
    records: RecordOf<K>[],
  ): Promise<number> {
    const edits = records.map((after) => ({ kind, id: after.id, after }));
    return (await commitChange(trx, writer, edits)).seq;
  }

  /** Refuses when the club has no such record. */
  async function found(trx: Transaction<Tables>, kind: KindName, id: string): Promise<void> {
    if (await kindTable(trx, clubId, kind).one(id)) return;
    throw new Refusal('missing', 'id', `The club has no ${allKinds[kind].word} with the id "${id}".`);
  }

  const lastOfDay = keptPrescriptions(clubId);
  const newest = newestChanges(clubId);
  const whole = keptRecords(clubId, async (trx) => seen.club(await allRecords(trx, clubId)));

  /** To be used within the transaction: lists that may be long are read when they are gone through. */
  async function content(trx: Transaction<Tables>, filter: SetFilter = {}): Promise<ArchiveContent> {
    return {
      records: seen.club(await allRecords(trx, clubId)),
      prescriptions: seen.each('prescription', () => allPrescriptions(trx, clubId)),
      takenPlans: seen.each('takenPlan', () => allTakenPlans(trx, clubId)),
      sets: seen.each('loggedSet', () => archivedSets(trx, clubId, filter)),
      former: seen.former(await formerGearOfLog(trx, clubId, filter)),
    };
  }

  function seenTouched({ set, counted }: TouchedSet): TouchedSet[] {
    const one = seen.one('loggedSet', set);
    return one ? [{ set: one, counted }] : [];
  }

  async function markOne(id: string, did: 'struck' | 'restored'): Promise<{ seq: number }> {
    const { seq } = await write((trx) => markSet(trx, writer, id, did));
    return { seq };
  }

  return {
    path,
    mark,
    clubId,
    who,
    list: async (kind) => seen.all(kind, await kindTable(db, clubId, kind).live()),
    get: async (kind, id) => seen.one(kind, await kindTable(db, clubId, kind).one(id)),
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
    change: (kind, id, how) =>
      write((trx) => changeRecord(trx, writer, kind, id, how, (record) => seen.one(kind, record))),
    remove: (kind, id) =>
      write(async (trx) => {
        await found(trx, kind, id);
        const { seq } = await commitChange(trx, writer, await removal(trx, clubId, kind, [id]));
        return { seq };
      }),
    putTogether: (records) =>
      write(async (trx) => {
        const edits = records.map(({ kind, record }) => ({ kind, id: record.id, after: record }));
        return { seq: (await commitChange(trx, writer, edits)).seq };
      }),
    putAll: (kind, records) => write(async (trx) => ({ seq: await put(trx, kind, records) })),

    today: () => clubToday(db, clubId),
    records: () => read(whole),
    since: (known) =>
      read(async (trx) => {
        const changes = await changesSince(trx, clubId, newest, known);
        return changes ? seen.changes(changes) : whole(trx);
      }),
    importRecords: (records, rest = {}) =>
      write((trx) => replaceClub(trx, writer, { ...nothingBeside, ...rest, records })),
    replaceAll: (by, keep) =>
      write(async (trx) => {
        await keep(await content(trx));
        return replaceClub(trx, writer, by);
      }),
    swapAll: writeBeside && ((files) => told(writeBeside(files, clubId, (trx) => swapClub(trx, writer)))),

    logSets: async (given) => {
      const sets = checkSets(given);
      return write((trx) => logSets(trx, writer, sets));
    },
    async takeSetsIn(given) {
      checkSets(given);
      const { seq } = await told(takeSetsIn(database, writer, given));
      return { seq };
    },
    strikeSet: (id) => markOne(id, 'struck'),
    restoreSet: (id) => markOne(id, 'restored'),
    correctSets: (corrections) => write((trx) => correctSets(trx, writer, corrections)),
    loggedSets: async (filter = {}) => seen.all('loggedSet', await readSets(db, clubId, filter)),
    async setsPage(filter, page) {
      const { sets, end } = await setsPage(db, clubId, filter, page);
      return { sets: seen.all('loggedSet', sets), end };
    },
    logDays: (filter, page) => logDays(db, clubId, filter, page),
    logMarks: (lifterId) => logMarks(db, clubId, lifterId),
    async touchedSets(seq) {
      const touched = await read((trx) => touchedSets(trx, clubId, newest, seq));
      return touched && { ...touched, sets: touched.sets.flatMap(seenTouched) };
    },
    hasSets: (dayId) => hasSets(db, clubId, dayId),
    bandReps: () => read((trx) => bandReps(trx, clubId)),
    formerGear: async (sets) => seen.former(await formerGear(db, clubId, sets)),

    undo: async (seq) => seen.change(await write((trx) => undoChange(trx, writer, seq))),
    trouble,
    stopWriting,
    behindWrites,
    whatWasDone: (asked) => read((trx) => whatWasDone(trx, clubId, seen, asked)),
    latestSeq: () => latestSeq(db, clubId),
    standing: () => latestStanding(db, clubId),
    async lastChange(isSuch) {
      const { seq = 0, madeAt = null } = (await lastChange(db, clubId, isSuch)) ?? {};
      return { seq, madeAt };
    },
    lastReplaced: () => lastReplaced(db, clubId),
    changesAfter: async (seq) => (await changesAfter(db, clubId, seq)).map(seen.change),
    changesTouching: async (kinds, after, most) =>
      (await changesTouching(db, clubId, kinds, after, most)).map(seen.change),
    changesMadeAfter: async (instant) => (await changesMadeAfter(db, clubId, instant)).map(seen.change),
    tellOf: (seq) => void news.emit('change', clubId, seq),
    onChange(listener) {
      const hear = (changed: string, seq: number) => {
        if (changed === clubId) listener(seq);
      };
      news.on('change', hear);
      return () => news.off('change', hear);
    },

    async addPrescription(dayId, solvedAt, document) {
      const { added } = await write(async (trx) => {
        await found(trx, 'day', dayId);
        const added = await appendPrescription(trx, clubId, dayId, solvedAt, document);
        const { seq } = await appendChange(trx, writer);
        return { added, seq };
      });
      return added;
    },
    latestPrescription: async (dayId) => seen.one('prescription', await lastOfDay(db, dayId)),
    prescription: async (dayId, number) =>
      seen.one('prescription', await prescriptionOf(db, clubId, dayId, number)),
    async addTakenPlan(seasonId, takenAt, document) {
      const { added } = await write(async (trx) => {
        await found(trx, 'season', seasonId);
        const takenBy = who.name;
        const added = await appendTakenPlan(trx, clubId, { seasonId, takenAt, takenBy, document });
        const { seq } = await appendChange(trx, writer);
        return { added, seq };
      });
      return added;
    },
    takenPlans: async (seasonId) => seen.all('takenPlan', await takenHeads(db, clubId, seasonId)),
    takenPlan: async (seasonId, number) =>
      seen.one('takenPlan', await takenPlanOf(db, clubId, seasonId, number)),
    snapshot: (use, filter) => read(async (trx) => use(await content(trx, filter))),
    look: () =>
      read(async (trx) => lookOf(seen.club(await allRecords(trx, clubId)), await countLists(trx, clubId))),
  };
}

async function allRecords(db: Kysely<Tables>, clubId: string): Promise<ClubRecords> {
  const lists: Partial<Record<KindName, unknown>> = {};
  for (const kind of kindNames) lists[kind] = await kindTable(db, clubId, kind).live();
  return lists as ClubRecords;
}
