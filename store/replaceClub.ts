import type { Kysely } from 'kysely';
import type { ArchiveContent } from '#contract/archive/archiveContent.ts';
import { formerKinds } from '#contract/archive/formerRecord.ts';
import { namedByRecord, namedBySet } from '#contract/log/namedBySet.ts';
import { type KindName, kindNames } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { inLots } from '#contract/records/long.ts';
import { appendChange, type ChangeEntry } from './changeLog.ts';
import { checkFaults, checkShape } from './checks.ts';
import { kindTable } from './kindTable.ts';
import { checkThere } from './logSets.ts';
import { putPrescription } from './prescriptions.ts';
import { Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';
import { setsInOneQuery, setsWriter } from './setsWriter.ts';
import { putTakenPlan } from './takenPlans.ts';
import type { Writer } from './Writer.ts';

/** Replaces all that a club has. To be called within a transaction, so that a refusal leaves everything as it was. */
export async function replaceClub(
  db: Kysely<Tables>,
  writer: Writer,
  { records, prescriptions, takenPlans, sets, former }: ArchiveContent,
): Promise<{ seq: number }> {
  const { clubId } = writer;
  const entries = kindNames.flatMap((kind) =>
    records[kind].map((record): ChangeEntry => {
      return { kind, id: record.id, before: null, after: checkShape(kind, record) };
    }),
  );
  checkIds([...entries, ...former.map(({ kind, record }) => ({ kind, id: record.id }))]);
  await emptyClub(db, clubId);
  await checkFaults(db, clubId, entries, null);
  for (const { kind, after } of entries) {
    if (after) await kindTable(db, clubId, kind).put(after);
  }
  const days = new Set(records.day.map((day) => day.id));
  for await (const prescription of prescriptions) {
    if (!days.has(prescription.dayId)) {
      throw new Refusal(
        'invalid',
        'dayId',
        `A prescription names the day "${prescription.dayId}", which is not there.`,
      );
    }
    await putPrescription(db, clubId, prescription);
  }
  const seasons = new Set(records.season.map(({ id }) => id));
  for await (const taken of takenPlans) {
    if (!seasons.has(taken.seasonId)) {
      const sentence = `A taken plan names the season "${taken.seasonId}", which is not there.`;
      throw new Refusal('invalid', 'seasonId', sentence);
    }
    await putTakenPlan(db, clubId, taken);
  }
  const change = await appendChange(db, writer, { replaced: true });
  await putLog(db, clubId, { sets, former }, change.seq);
  return change;
}

/** Takes out all that a club has but its log of changes. */
export async function emptyClub(db: Kysely<Tables>, clubId: string): Promise<void> {
  await db.deleteFrom('loggedSet').where('clubId', '=', clubId).execute();
  await db.deleteFrom('prescription').where('clubId', '=', clubId).execute();
  await db.deleteFrom('takenPlan').where('clubId', '=', clubId).execute();
  for (const kind of kindNames.toReversed()) await kindTable(db, clubId, kind).empty();
}

/** The log and what it names, which may be gear that was removed. Of a long log a lot at a time is held. */
async function putLog(
  db: Kysely<Tables>,
  clubId: string,
  { sets, former }: Pick<ArchiveContent, 'sets' | 'former'>,
  seq: number,
): Promise<void> {
  const gone = (kind: KindName) => former.filter((one) => one.kind === kind).map(({ record }) => record);
  const find = async (kind: KindName, ids: string[]) => [
    ...(await kindTable(db, clubId, kind).idsAmong(ids)),
    ...gone(kind).map(({ id }) => id),
  ];
  await checkThere(
    former.flatMap(({ kind, record }) => namedByRecord(kind, record)),
    find,
  );
  for (const kind of formerKinds) {
    for (const record of gone(kind)) await kindTable<KindName>(db, clubId, kind).put(record, seq);
  }
  const isNew = firstOfAlike();
  const write = setsWriter(db, clubId);
  for await (const lot of inLots(sets, setsInOneQuery)) {
    await checkThere(lot.filter(isNew).flatMap(namedBySet), find);
    if ((await write(lot)) < lot.length) await refuseSecond(sets);
  }
}

/** Whether a set names anything that none before it did, by what it names it with. */
function firstOfAlike(): (set: LoggedSet) => boolean {
  const known = new Set<string>();
  return ({ lifterId, dayId, setup }) => {
    const names = [`lifter ${lifterId}`, `day ${dayId}`, JSON.stringify(setup)];
    if (names.every((name) => known.has(name))) return false;
    if (known.size > mostRemembered) known.clear();
    for (const name of names) known.add(name);
    return true;
  };
}

const mostRemembered = 50_000;

/** Of the sets that have an id in common, names the first. */
async function refuseSecond(sets: ArchiveContent['sets']): Promise<never> {
  const seen = new Set<string>();
  for await (const { id } of sets) {
    if (seen.has(id)) throw idTwice('loggedSet', id);
    seen.add(id);
  }
  throw new Error('A set was not written, and its id stands once alone.');
}

function checkIds(entries: { kind: string; id: string }[]): void {
  const clubs = entries.filter(({ kind }) => kind === 'club').length;
  if (clubs !== 1)
    throw new Refusal('invalid', 'club', `There are ${clubs} records of the club itself; there must be one.`);
  const seen = new Set<string>();
  for (const { kind, id } of entries) {
    const key = `${kind} ${id}`;
    if (seen.has(key)) throw idTwice(kind, id);
    seen.add(key);
  }
}

function idTwice(kind: string, id: string): Refusal {
  return new Refusal('invalid', 'id', `The id "${id}" appears twice among the records of kind ${kind}.`);
}
