import type { CreateTableBuilder, Kysely } from 'kysely';

/** Ways of training, meets, seasons with their lifters, days without training, groups of a season that the coach set by hand; plans that were taken. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await recordTable(db, 'method', [], (table) =>
    table.addColumn('methodDocument', 'text', (c) => c.notNull()),
  );
  await recordTable(db, 'meet', [], (table) =>
    table
      .addColumn('title', 'text', (c) => c.notNull())
      .addColumn('date', 'text', (c) => c.notNull())
      .addColumn('note', 'text', (c) => c.notNull()),
  );
  await recordTable(db, 'season', [['methodId', 'method']], (table) =>
    table
      .addColumn('title', 'text', (c) => c.notNull())
      .addColumn('methodId', 'text', (c) => c.notNull())
      .addColumn('fromOn', 'text', (c) => c.notNull())
      .addColumn('note', 'text', (c) => c.notNull()),
  );
  await recordTable(db, 'seasonEntry', ofSeasonAndLifter, (table) =>
    table
      .addColumn('seasonId', 'text', (c) => c.notNull())
      .addColumn('lifterId', 'text', (c) => c.notNull())
      .addColumn('meetIds', 'text', (c) => c.notNull()),
  );
  await recordTable(db, 'absence', [['lifterId', 'lifter']], (table) =>
    table
      .addColumn('lifterId', 'text')
      .addColumn('fromOn', 'text', (c) => c.notNull())
      .addColumn('untilOn', 'text', (c) => c.notNull())
      .addColumn('why', 'text', (c) => c.notNull()),
  );
  await recordTable(db, 'plannedByHand', ofSeasonAndLifter, (table) =>
    table
      .addColumn('seasonId', 'text', (c) => c.notNull())
      .addColumn('lifterId', 'text')
      .addColumn('date', 'text', (c) => c.notNull())
      .addColumn('askedId', 'text', (c) => c.notNull())
      .addColumn('instead', 'text')
      .addColumn('note', 'text', (c) => c.notNull()),
  );
  await takenPlans(db);
}

/** Plans of seasons as they were taken, each under the next number of its season. */
async function takenPlans(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('takenPlan')
    .addColumn('clubId', 'text', (c) => c.notNull())
    .addColumn('id', 'text', (c) => c.notNull())
    .addColumn('seasonId', 'text', (c) => c.notNull())
    .addColumn('number', 'integer', (c) => c.notNull())
    .addColumn('takenAt', 'text', (c) => c.notNull())
    .addColumn('takenBy', 'text')
    .addColumn('document', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('takenPlan_pk', ['clubId', 'id'])
    .addUniqueConstraint('takenPlan_number', ['clubId', 'seasonId', 'number'])
    .addForeignKeyConstraint('takenPlan_season', ['clubId', 'seasonId'], 'season', ['clubId', 'id'])
    .execute();
}

/** A field that names a record of another table. */
type Named = readonly [field: string, table: string];

const ofSeasonAndLifter: readonly Named[] = [
  ['seasonId', 'season'],
  ['lifterId', 'lifter'],
];

/** A table of records: what all of them have, the kind's own columns, a key and an index for each record that it names. */
async function recordTable(
  db: Kysely<unknown>,
  name: string,
  named: readonly Named[],
  columns: (table: CreateTableBuilder<string>) => CreateTableBuilder<string, string>,
): Promise<void> {
  const table = db.schema
    .createTable(name)
    .addColumn('clubId', 'text', (c) => c.notNull())
    .addColumn('id', 'text', (c) => c.notNull())
    .addColumn('removedSeq', 'integer') as CreateTableBuilder<string>;
  const whole = columns(table)
    .addPrimaryKeyConstraint(`${name}_pk`, ['clubId', 'id'])
    .addForeignKeyConstraint(`${name}_club`, ['clubId'], 'club', ['clubId']);
  await named
    .reduce(
      (made, [field, to]) =>
        made.addForeignKeyConstraint(`${name}_${field}`, ['clubId', field], to, ['clubId', 'id']),
      whole,
    )
    .execute();
  for (const [field] of named)
    await db.schema.createIndex(`${name}_by_${field}`).on(name).columns(['clubId', field]).execute();
}
