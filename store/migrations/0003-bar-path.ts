import type { Kysely } from 'kysely';

/** Where the bar is at the bottom of a lift, fore or aft of its place at lockout; nobody had measured it before. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable('liftHeights').addColumn('bottomForwardM', 'double precision').execute();
}
