import type { Kysely } from 'kysely';

interface Days {
  day: { clubId: string; id: string; groups: string };
}

/** Labels of lifters, the step of bars on the wall, kept work, by which number of a day a set was entered; on days a note and points more for one lifter, and who is away. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .alterTable('lifter')
    .addColumn('labels', 'text', (c) => c.notNull().defaultTo('[]'))
    .execute();
  await db.schema.alterTable('club').addColumn('wallStepKg', 'double precision').execute();
  await db.schema
    .createTable('workTemplate')
    .addColumn('clubId', 'text', (c) => c.notNull())
    .addColumn('id', 'text', (c) => c.notNull())
    .addColumn('removedSeq', 'integer')
    .addColumn('label', 'text', (c) => c.notNull())
    .addColumn('work', 'text', (c) => c.notNull())
    .addColumn('lift', 'text', (c) => c.notNull())
    .addColumn('start', 'text', (c) => c.notNull())
    .addColumn('aim', 'text', (c) => c.notNull())
    .addColumn('blocks', 'text', (c) => c.notNull())
    .addColumn('leastChance', 'double precision')
    .addColumn('bounds', 'text')
    .addColumn('note', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('workTemplate_pk', ['clubId', 'id'])
    .addForeignKeyConstraint('workTemplate_club', ['clubId'], 'club', ['clubId'])
    .execute();
  await db.schema.alterTable('loggedSet').addColumn('planNumber', 'integer').execute();
  await nobodyAway(db);
}

async function nobodyAway(db: Kysely<Days>): Promise<void> {
  for (const { clubId, id, groups } of await db
    .selectFrom('day')
    .select(['clubId', 'id', 'groups'])
    .execute()) {
    const told = (JSON.parse(groups) as { places: object[] }[]).map((group) => ({
      away: [],
      ...group,
      places: group.places.map((place) => ({ moreShare: 0, note: '', ...place })),
    }));
    await db
      .updateTable('day')
      .set({ groups: JSON.stringify(told) })
      .where('clubId', '=', clubId)
      .where('id', '=', id)
      .execute();
  }
}
