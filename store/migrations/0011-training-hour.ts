import type { Kysely } from 'kysely';

/** When training usually begins and how long it lasts, and whether the calendar says who trains. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable('club').addColumn('trainingStartsAt', 'text').execute();
  await db.schema
    .alterTable('club')
    .addColumn('trainingMinutes', 'integer', (c) => c.notNull().defaultTo(120))
    .execute();
  await db.schema
    .alterTable('club')
    .addColumn('namesInCalendar', 'integer', (c) => c.notNull().defaultTo(0))
    .execute();
}
