import type { Kysely } from 'kysely';
import { type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import { appendChange, type ChangeEntry } from './changeLog.ts';
import { checkLabels, checkNamed, checkShape, checkTaut } from './checks.ts';
import { kindTable } from './kindTable.ts';
import { putPrescription } from './prescriptions.ts';
import { Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';

/** Replaces all that a club has. To be called within a transaction, so that a refusal leaves everything as it was. */
export async function replaceClub(
  db: Kysely<Tables>,
  clubId: string,
  records: ClubRecords,
  prescriptions: Prescription[],
): Promise<{ seq: number }> {
  const entries = kindNames.flatMap((kind) =>
    records[kind].map((record): ChangeEntry => {
      return { kind, id: record.id, before: null, after: checkShape(kind, record) };
    }),
  );
  checkIds(entries);
  await db.deleteFrom('prescription').where('clubId', '=', clubId).execute();
  for (const kind of kindNames.toReversed()) await kindTable(db, clubId, kind).empty();
  await checkLabels(db, clubId, entries);
  await checkNamed(db, clubId, entries);
  for (const { kind, after } of entries) {
    if (after) await kindTable(db, clubId, kind).put(after);
  }
  await checkTaut(db, clubId, entries);
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
  return appendChange(db, clubId, []);
}

function checkIds(entries: ChangeEntry[]): void {
  const clubs = entries.filter(({ kind }) => kind === 'club').length;
  if (clubs !== 1)
    throw new Refusal('invalid', 'club', `There are ${clubs} records of the club itself; there must be one.`);
  const seen = new Set<string>();
  for (const { kind, id } of entries) {
    const key = `${kind} ${id}`;
    if (seen.has(key))
      throw new Refusal('invalid', 'id', `The id "${id}" stands twice among the records of kind ${kind}.`);
    seen.add(key);
  }
}
