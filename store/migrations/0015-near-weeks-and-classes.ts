import type { Kysely } from 'kysely';

/** How many weeks of a season are worked out to bar and bands, and the classes of body mass that lifters mean to be in at their meets. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable('club').addColumn('nearWeeks', 'integer').execute();
  await db.schema
    .alterTable('seasonEntry')
    .addColumn('classes', 'text', (c) => c.notNull().defaultTo('[]'))
    .execute();
}
