import type { Kysely } from 'kysely';

interface Days {
  day: { clubId: string; id: string; groups: string };
}

/** What proposals keep to: of the club, by the trade's defaults of then, and no group's own until now. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await add('leastBarShare', 'double precision', 0.4);
  await add('leastBandShare', 'double precision', 0.25);
  await add('mostBandShare', 'double precision', 0.45);
  await add('mostPairs', 'integer', 3);
  await byTheClub(db);

  function add(name: string, type: 'double precision' | 'integer', value: number) {
    return db.schema
      .alterTable('club')
      .addColumn(name, type, (c) => c.notNull().defaultTo(value))
      .execute();
  }
}

async function byTheClub(db: Kysely<Days>): Promise<void> {
  for (const { clubId, id, groups } of await db
    .selectFrom('day')
    .select(['clubId', 'id', 'groups'])
    .execute()) {
    const bound = (JSON.parse(groups) as object[]).map((group) => ({ bounds: null, ...group }));
    await db
      .updateTable('day')
      .set({ groups: JSON.stringify(bound) })
      .where('clubId', '=', clubId)
      .where('id', '=', id)
      .execute();
  }
}
