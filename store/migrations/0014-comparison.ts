import type { Kysely } from 'kysely';

/** Two ways of training compared by lot, and who was taken out of such a comparison. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('comparison')
    .addColumn('clubId', 'text', (c) => c.notNull())
    .addColumn('id', 'text', (c) => c.notNull())
    .addColumn('removedSeq', 'integer')
    .addColumn('title', 'text', (c) => c.notNull())
    .addColumn('lift', 'text', (c) => c.notNull())
    .addColumn('family', 'text')
    .addColumn('firstMethodId', 'text')
    .addColumn('secondMethodId', 'text')
    .addColumn('drawnOn', 'text', (c) => c.notNull())
    .addColumn('planDocument', 'text', (c) => c.notNull())
    .addColumn('note', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('comparison_pk', ['clubId', 'id'])
    .addForeignKeyConstraint('comparison_club', ['clubId'], 'club', ['clubId'])
    .addForeignKeyConstraint('comparison_firstMethodId', ['clubId', 'firstMethodId'], 'method', [
      'clubId',
      'id',
    ])
    .addForeignKeyConstraint('comparison_secondMethodId', ['clubId', 'secondMethodId'], 'method', [
      'clubId',
      'id',
    ])
    .execute();
  await db.schema
    .createTable('takenOut')
    .addColumn('clubId', 'text', (c) => c.notNull())
    .addColumn('id', 'text', (c) => c.notNull())
    .addColumn('removedSeq', 'integer')
    .addColumn('comparisonId', 'text', (c) => c.notNull())
    .addColumn('lifterId', 'text', (c) => c.notNull())
    .addColumn('fromOn', 'text', (c) => c.notNull())
    .addColumn('why', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('takenOut_pk', ['clubId', 'id'])
    .addForeignKeyConstraint('takenOut_club', ['clubId'], 'club', ['clubId'])
    .addForeignKeyConstraint('takenOut_comparisonId', ['clubId', 'comparisonId'], 'comparison', [
      'clubId',
      'id',
    ])
    .addForeignKeyConstraint('takenOut_lifterId', ['clubId', 'lifterId'], 'lifter', ['clubId', 'id'])
    .execute();
  for (const [table, field] of [
    ['comparison', 'firstMethodId'],
    ['comparison', 'secondMethodId'],
    ['takenOut', 'comparisonId'],
    ['takenOut', 'lifterId'],
  ] as const)
    await db.schema.createIndex(`${table}_by_${field}`).on(table).columns(['clubId', field]).execute();
}
