import type { Kysely } from 'kysely';

interface Changes {
  change: { entries: string; sets: string | null; replaced: number };
}

/**
 * Of every change who made it, and whether it replaced all that the club had. Nobody was asked who until now; an older change that
 * names no record and no set may have replaced everything, and is taken for one that did.
 */
export async function up(db: Kysely<Changes>): Promise<void> {
  await db.schema.alterTable('change').addColumn('who', 'text').execute();
  await db.schema
    .alterTable('change')
    .addColumn('replaced', 'integer', (c) => c.notNull().defaultTo(0))
    .execute();
  await db
    .updateTable('change')
    .set({ replaced: 1 })
    .where('entries', '=', '[]')
    .where('sets', 'is', null)
    .execute();
}
