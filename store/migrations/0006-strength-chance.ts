import type { Kysely } from 'kysely';

interface Days {
  day: { clubId: string; id: string; groups: string };
}

/** How sure the strength must be that proposals go by: of the club, and of every group that has bounds of its own. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .alterTable('club')
    .addColumn('strengthChance', 'double precision', (c) => c.notNull().defaultTo(0.75))
    .execute();
  await inOwnBounds(db);
}

async function inOwnBounds(db: Kysely<Days>): Promise<void> {
  for (const { clubId, id, groups } of await db
    .selectFrom('day')
    .select(['clubId', 'id', 'groups'])
    .execute()) {
    const told = (JSON.parse(groups) as { bounds?: object | null }[]).map((group) =>
      group.bounds ? { ...group, bounds: { strengthChance: 0.75, ...group.bounds } } : group,
    );
    await db
      .updateTable('day')
      .set({ groups: JSON.stringify(told) })
      .where('clubId', '=', clubId)
      .where('id', '=', id)
      .execute();
  }
}
