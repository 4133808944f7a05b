import type { Kysely } from 'kysely';

/** What happened: the log of changes and the prescriptions solved for each day. Both only grow. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('change')
    .addColumn('clubId', 'text', (c) => c.notNull())
    .addColumn('seq', 'integer', (c) => c.notNull())
    .addColumn('madeAt', 'text', (c) => c.notNull())
    .addColumn('undoes', 'integer')
    .addColumn('entries', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('change_pk', ['clubId', 'seq'])
    .execute();
  await db.schema
    .createTable('prescription')
    .addColumn('clubId', 'text', (c) => c.notNull())
    .addColumn('id', 'text', (c) => c.notNull())
    .addColumn('dayId', 'text', (c) => c.notNull())
    .addColumn('number', 'integer', (c) => c.notNull())
    .addColumn('solvedAt', 'text', (c) => c.notNull())
    .addColumn('document', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('prescription_pk', ['clubId', 'id'])
    .addUniqueConstraint('prescription_number', ['clubId', 'dayId', 'number'])
    .addForeignKeyConstraint('prescription_day', ['clubId', 'dayId'], 'day', ['clubId', 'id'])
    .execute();
}
