import type { Kysely } from 'kysely';

/** What a lifter may not do, from a day until another. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('restriction')
    .addColumn('clubId', 'text', (c) => c.notNull())
    .addColumn('id', 'text', (c) => c.notNull())
    .addColumn('removedSeq', 'integer')
    .addColumn('lifterId', 'text', (c) => c.notNull())
    .addColumn('lift', 'text', (c) => c.notNull())
    .addColumn('leastBoxM', 'double precision')
    .addColumn('mostShare', 'double precision')
    .addColumn('shareOf', 'text', (c) => c.notNull())
    .addColumn('fromOn', 'text', (c) => c.notNull())
    .addColumn('untilOn', 'text')
    .addColumn('note', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('restriction_pk', ['clubId', 'id'])
    .addForeignKeyConstraint('restriction_club', ['clubId'], 'club', ['clubId'])
    .addForeignKeyConstraint('restriction_lifterId', ['clubId', 'lifterId'], 'lifter', ['clubId', 'id'])
    .execute();
  await db.schema
    .createIndex('restriction_by_lifterId')
    .on('restriction')
    .columns(['clubId', 'lifterId'])
    .execute();
}
