import type { Kysely } from 'kysely';
import { type FormerRecord, formerKinds } from '#contract/archive/formerRecord.ts';
import type { ArchiveContent } from '#contract/archive/writeArchive.ts';
import { namedByRecord, namedBySet } from '#contract/log/namedBySet.ts';
import { type KindName, kindNames } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { appendChange, type ChangeEntry } from './changeLog.ts';
import { checkFaults, checkShape } from './checks.ts';
import { kindTable } from './kindTable.ts';
import { checkThere, putSets } from './logSets.ts';
import { putPrescription } from './prescriptions.ts';
import { Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';
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
  checkIds([
    ...entries,
    ...former.map(({ kind, record }) => ({ kind, id: record.id })),
    ...sets.map(({ id }) => ({ kind: 'loggedSet', id })),
  ]);
  await db.deleteFrom('loggedSet').where('clubId', '=', clubId).execute();
  await db.deleteFrom('prescription').where('clubId', '=', clubId).execute();
  await db.deleteFrom('takenPlan').where('clubId', '=', clubId).execute();
  for (const kind of kindNames.toReversed()) await kindTable(db, clubId, kind).empty();
  await checkFaults(db, clubId, entries, null);
  for (const { kind, after } of entries) {
    if (after) await kindTable(db, clubId, kind).put(after);
  }
  const days = new Set(records.day.map((day) => day.id));
  for (const prescription of prescriptions) {
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
  for (const taken of takenPlans) {
    if (!seasons.has(taken.seasonId)) {
      const sentence = `A taken plan names the season "${taken.seasonId}", which is not there.`;
      throw new Refusal('invalid', 'seasonId', sentence);
    }
    await putTakenPlan(db, clubId, taken);
  }
  const change = await appendChange(db, writer, { replaced: true });
  await putLog(db, clubId, sets, former, change.seq);
  return change;
}

/** The log and what it names, which may be gear that was removed. */
async function putLog(
  db: Kysely<Tables>,
  clubId: string,
  sets: LoggedSet[],
  former: FormerRecord[],
  seq: number,
): Promise<void> {
  const named = [
    ...former.flatMap(({ kind, record }) => namedByRecord(kind, record)),
    ...sets.flatMap(namedBySet),
  ];
  const gone = (kind: KindName) => former.filter((one) => one.kind === kind).map(({ record }) => record);
  await checkThere(named, async (kind, ids) => [
    ...(await kindTable(db, clubId, kind).among(ids)),
    ...gone(kind),
  ]);
  for (const kind of formerKinds) {
    for (const record of gone(kind)) await kindTable<KindName>(db, clubId, kind).put(record, seq);
  }
  await putSets(db, clubId, sets);
}

function checkIds(entries: { kind: string; id: string }[]): void {
  const clubs = entries.filter(({ kind }) => kind === 'club').length;
  if (clubs !== 1)
    throw new Refusal('invalid', 'club', `There are ${clubs} records of the club itself; there must be one.`);
  const seen = new Set<string>();
  for (const { kind, id } of entries) {
    const key = `${kind} ${id}`;
    if (seen.has(key))
      throw new Refusal('invalid', 'id', `The id "${id}" appears twice among the records of kind ${kind}.`);
    seen.add(key);
  }
}
