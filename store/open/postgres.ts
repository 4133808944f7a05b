import { Kysely, PostgresDialect, type PostgresPool, sql } from 'kysely';
import type { Tables } from '../schema.ts';
import type { Database } from './Database.ts';

/**
 * A PostgreSQL database, reached by a pool of connections that the caller makes. Files about it are kept beside `path`. Refused
 * where it orders text otherwise than by its bytes: the order of ids is the order in which records are listed. It keeps no text with
 * the character NUL in it (PostgreSQL's documentation, "Character Types").
 */
export async function openPostgres(pool: PostgresPool, path: string): Promise<Database> {
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  const { rows } = await sql<{ order: string }>`
    select datcollate as "order" from pg_database where datname = current_database()`.execute(db);
  if (rows[0]?.order !== byBytes) {
    await db.destroy();
    throw new Error(
      `The database orders text by "${rows[0]?.order}"; it must be made with the collation "${byBytes}".`,
    );
  }
  let stopped: string | null = null;
  return {
    db,
    isOneConnection: false,
    path,
    mark: null,
    trouble: () => stopped,
    stopWriting(why) {
      stopped ??= why;
    },
    // Whoever holds a table is waited for over there.
    patiently: async (work) => work(),
    write: (clubId, work) =>
      db.transaction().execute(async (trx) => {
        await sql`select pg_advisory_xact_lock(hashtextextended(${clubId}, 0))`.execute(trx);
        return work(trx);
      }),
    writeBeside: null,
    // Whoever waits for another there is let in in turn.
    behindWrites: async (work) => work(),
    read: (work) =>
      db.transaction().setIsolationLevel('repeatable read').setAccessMode('read only').execute(work),
  };
}

const byBytes = 'C';
