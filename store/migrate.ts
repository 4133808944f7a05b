import { type Kysely, type Migration, Migrator } from 'kysely';
import * as club from './migrations/0001-club.ts';
import * as history from './migrations/0002-history.ts';
import type { Tables } from './schema.ts';

/** Every step from an empty file to today's tables, in order. A landed step is never edited; the next one mends it. */
export const migrations: Record<string, Migration> = {
  '0001-club': club,
  '0002-history': history,
};

/** Brings the file to today's tables, or to an earlier step by name; what has run is recorded in the file itself. */
export async function migrate(db: Kysely<Tables>, upTo?: string): Promise<void> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => migrations } });
  const { error } = upTo ? await migrator.migrateTo(upTo) : await migrator.migrateToLatest();
  if (error instanceof Error && error.message.includes('corrupted migrations')) {
    throw new Error(
      'This club file was written by a later version of Rackwright; update the program to open it.',
      {
        cause: error,
      },
    );
  }
  if (error) throw error;
}
