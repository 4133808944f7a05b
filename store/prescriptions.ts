import type { Kysely } from 'kysely';
import type { Prescription } from '#contract/records/prescription.ts';
import { newId } from './newId.ts';
import { parseKept } from './parseKept.ts';
import type { PrescriptionRow, Tables } from './schema.ts';

export async function appendPrescription(
  db: Kysely<Tables>,
  clubId: string,
  dayId: string,
  solvedAt: string,
  document: unknown,
): Promise<Prescription> {
  const last = await latestPrescription(db, clubId, dayId);
  const added = { id: newId(), dayId, number: (last?.number ?? 0) + 1, solvedAt, document };
  await putPrescription(db, clubId, added);
  return added;
}

export async function latestPrescription(
  db: Kysely<Tables>,
  clubId: string,
  dayId: string,
): Promise<Prescription | null> {
  const row = await db
    .selectFrom('prescription')
    .selectAll()
    .where('clubId', '=', clubId)
    .where('dayId', '=', dayId)
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row ? toPrescription(row) : null;
}

/** The last prescriptions of days, each read once: what stands under a number never changes, and every screen of the day asks for it. */
export function keptPrescriptions(clubId: string) {
  const kept = new Map<string, Prescription>();
  return async (db: Kysely<Tables>, dayId: string): Promise<Prescription | null> => {
    const last = await db
      .selectFrom('prescription')
      .select(['id', 'number', 'solvedAt'])
      .where('clubId', '=', clubId)
      .where('dayId', '=', dayId)
      .orderBy('number', 'desc')
      .limit(1)
      .executeTakeFirst();
    const known = kept.get(dayId);
    if (last && last.id === known?.id && last.number === known.number && last.solvedAt === known.solvedAt)
      return known;
    kept.delete(dayId);
    const found = await latestPrescription(db, clubId, dayId);
    if (found) kept.set(dayId, found);
    const [oldest] = kept.keys();
    if (kept.size > mostKept && oldest !== undefined) kept.delete(oldest);
    return found;
  };
}

/** Days that are looked at on one evening. */
const mostKept = 20;

/** One of a day's prescriptions by its number; null where the day has none of that number. */
export async function prescriptionOf(
  db: Kysely<Tables>,
  clubId: string,
  dayId: string,
  number: number,
): Promise<Prescription | null> {
  const row = await db
    .selectFrom('prescription')
    .selectAll()
    .where('clubId', '=', clubId)
    .where('dayId', '=', dayId)
    .where('number', '=', number)
    .executeTakeFirst();
  return row ? toPrescription(row) : null;
}

/** The prescriptions of the days that the club has, for who says what is asked of them. */
export function prescriptionsThere(db: Kysely<Tables>, clubId: string) {
  return db
    .selectFrom('prescription')
    .innerJoin('day', (join) =>
      join.onRef('day.clubId', '=', 'prescription.clubId').onRef('day.id', '=', 'prescription.dayId'),
    )
    .where('prescription.clubId', '=', clubId)
    .where('day.removedSeq', 'is', null);
}

/** Every prescription of the days that the club has, oldest of each day first. */
export async function* allPrescriptions(
  db: Kysely<Tables>,
  clubId: string,
): AsyncGenerator<Prescription, void> {
  const heads = await prescriptionsThere(db, clubId)
    .select(['prescription.dayId', 'prescription.number'])
    .orderBy('prescription.dayId')
    .orderBy('prescription.number')
    .execute();
  for (const { dayId, number } of heads) {
    const one = await prescriptionOf(db, clubId, dayId, number);
    if (one) yield one;
  }
}

export async function putPrescription(
  db: Kysely<Tables>,
  clubId: string,
  { id, dayId, number, solvedAt, document }: Prescription,
) {
  const row: PrescriptionRow = { clubId, id, dayId, number, solvedAt, document: JSON.stringify(document) };
  await db.insertInto('prescription').values(row).execute();
}

function toPrescription({ id, dayId, number, solvedAt, document }: PrescriptionRow): Prescription {
  return { id, dayId, number, solvedAt, document: parseKept(document) };
}
