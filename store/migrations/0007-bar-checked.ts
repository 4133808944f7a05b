import type { Kysely } from 'kysely';

/** Of every set whether somebody looked at its bar and found it right; until now nobody could say so. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .alterTable('loggedSet')
    .addColumn('barChecked', 'integer', (c) => c.notNull().defaultTo(0))
    .execute();
}
