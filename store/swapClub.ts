import { type Kysely, sql } from 'kysely';
import { kindNames } from '#contract/records/allKinds.ts';
import { fieldsOf } from '#contract/records/fields.ts';
import { appendChange } from './changeLog.ts';
import { setFields } from './readSets.ts';
import { emptyClub } from './replaceClub.ts';
import type { PrescriptionRow, Tables, TakenPlanRow } from './schema.ts';
import type { Writer } from './Writer.ts';

/**
 * Replaces all that a club has by what stands under the same name in the tables of `beside`, where all of it was looked through: row
 * by row it goes from one file to the other, which takes a tenth of the time of putting it together here; the log, where the club is alone in
 * its file, as a whole table. To be called within a transaction.
 */
export async function swapClub(db: Kysely<Tables>, writer: Writer): Promise<{ seq: number }> {
  const { clubId } = writer;
  const isAlone = await isAloneIn(db, clubId);
  // The whole table at once: of a million sets it takes a twentieth of what it takes row by row.
  if (isAlone) await sql`delete from ${sql.id('main', 'loggedSet')}`.execute(db);
  await emptyClub(db, clubId);
  const change = await appendChange(db, writer, { replaced: true });
  for (const kind of kindNames) {
    // Gear of old counts as removed by this change.
    const removedSeq = sql`case when "removedSeq" is null then null else ${change.seq} end`;
    await takeOver(kind, [...fieldsOf(kind).map(({ name }) => name), 'removedSeq'], removedSeq);
  }
  await takeOver('prescription', prescriptionColumns);
  await takeOver('takenPlan', takenPlanColumns);
  if (isAlone)
    await sql`insert into ${sql.id('main', 'loggedSet')} select * from ${sql.id('beside', 'loggedSet')}`.execute(
      db,
    );
  else
    await takeOver(
      'loggedSet',
      setFields.map(({ name }) => name),
    );
  return change;

  /** `last`: what comes into the last of the columns, where that is not what stands in it. */
  async function takeOver(table: string, columns: readonly string[], last = sql.ref(columns.at(-1)!)) {
    const names = columns.map((column) => sql.ref(column));
    const into = sql.join([sql.ref('clubId'), ...names]);
    const from = sql.join([sql.ref('clubId'), ...names.slice(0, -1), last]);
    await sql`insert into ${sql.id('main', table)} (${into}) select ${from} from ${sql.id('beside', table)} where "clubId" = ${clubId}`.execute(
      db,
    );
  }
}

/**
 * Whether no other club has a log in either file, and both write theirs down alike, column by column: then SQLite takes the table and its
 * indexes over as they are ("INSERT INTO t1 SELECT * FROM t2", its transfer optimisation), where it would else seek a place for each row in
 * each index.
 */
async function isAloneIn(db: Kysely<Tables>, clubId: string): Promise<boolean> {
  const ofOthers = (schema: string) => {
    const log = sql.id(schema, 'loggedSet');
    return sql`exists (select 1 from ${log} where "clubId" < ${clubId}) or exists (select 1 from ${log} where "clubId" > ${clubId})`;
  };
  const { rows } = await sql<{ isAlone: number }>`
    select not (${ofOthers('main')} or ${ofOthers('beside')}) and ${columnsIn('main')} = ${columnsIn('beside')} as "isAlone"`.execute(
    db,
  );
  return rows[0]!.isAlone === 1;
}

function columnsIn(schema: string) {
  return sql`(select group_concat(name) from pragma_table_info('loggedSet', ${schema}))`;
}

const prescriptionColumns = ['id', 'dayId', 'number', 'solvedAt', 'document'] as const satisfies Exclude<
  keyof PrescriptionRow,
  'clubId'
>[];
const takenPlanColumns = [
  'id',
  'seasonId',
  'number',
  'takenAt',
  'takenBy',
  'document',
] as const satisfies Exclude<keyof TakenPlanRow, 'clubId'>[];
