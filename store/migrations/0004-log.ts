import { type Kysely, sql } from 'kysely';

/** The log of sets done, and what a change did to it; and how sure the work of a group is to be, which follows from it. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('loggedSet')
    .addColumn('clubId', 'text', (c) => c.notNull())
    .addColumn('id', 'text', (c) => c.notNull())
    .addColumn('lifterId', 'text', (c) => c.notNull())
    .addColumn('doneOn', 'text', (c) => c.notNull())
    .addColumn('order', 'integer', (c) => c.notNull())
    .addColumn('lift', 'text', (c) => c.notNull())
    .addColumn('equipment', 'text', (c) => c.notNull())
    .addColumn('setup', 'text', (c) => c.notNull())
    .addColumn('reps', 'integer', (c) => c.notNull())
    .addColumn('made', 'integer', (c) => c.notNull())
    .addColumn('stoppedAtS', 'double precision')
    .addColumn('meanSpeedsMps', 'text', (c) => c.notNull())
    .addColumn('peakSpeedsMps', 'text', (c) => c.notNull())
    .addColumn('repsInReserve', 'double precision')
    .addColumn('restS', 'integer')
    .addColumn('bodyMassKg', 'double precision')
    .addColumn('platform', 'integer', (c) => c.notNull())
    .addColumn('place', 'text', (c) => c.notNull())
    .addColumn('dayId', 'text')
    .addColumn('note', 'text', (c) => c.notNull())
    .addColumn('loggedAt', 'text', (c) => c.notNull())
    .addColumn('struckAt', 'text')
    .addPrimaryKeyConstraint('loggedSet_pk', ['clubId', 'id'])
    .addForeignKeyConstraint('loggedSet_lifterId', ['clubId', 'lifterId'], 'lifter', ['clubId', 'id'])
    .execute();
  await index('lifterId_doneOn', ['clubId', 'lifterId', 'doneOn']).execute();
  await index('doneOn', ['clubId', 'doneOn']).execute();
  await index('dayId', ['clubId', 'dayId']).where(sql.ref('dayId'), 'is not', null).execute();
  await db.schema.alterTable('change').addColumn('sets', 'text').execute();
  await askForNoChance(db);

  function index(name: string, columns: string[]) {
    return db.schema.createIndex(`loggedSet_by_${name}`).on('loggedSet').columns(columns);
  }
}

interface Days {
  day: { clubId: string; id: string; groups: string };
}

/** Until now no group of a training day could ask to be made lighter. */
async function askForNoChance(db: Kysely<Days>): Promise<void> {
  for (const { clubId, id, groups } of await db
    .selectFrom('day')
    .select(['clubId', 'id', 'groups'])
    .execute()) {
    const asked = (JSON.parse(groups) as object[]).map((group) => ({ leastChance: null, ...group }));
    await db
      .updateTable('day')
      .set({ groups: JSON.stringify(asked) })
      .where('clubId', '=', clubId)
      .where('id', '=', id)
      .execute();
  }
}
