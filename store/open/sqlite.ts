import { closeSync, mkdirSync, openSync } from 'node:fs';
import { dirname } from 'node:path';
import SqliteFile from 'better-sqlite3';
import {
  CompiledQuery,
  type DatabaseConnection,
  type DialectAdapter,
  type Driver,
  Kysely,
  SqliteAdapter,
  SqliteDialect,
  type SqliteDialectConfig,
  SqliteDriver,
  type TransactionSettings,
} from 'kysely';
import type { Tables } from '../schema.ts';
import type { Database } from './Database.ts';
import { noFile, ownFile, refuseOther } from './ownFile.ts';
import { patienceWith } from './patience.ts';

/**
 * Opens an SQLite file, or makes it, so that an acknowledged write is on the disk: write-ahead log, full synchronous writes. What
 * something else holds is waited for as long as `patienceMs`, without standing still. With a `mark` it must be that file.
 */
export async function openSqlite(
  path: string,
  { mark = null, patienceMs = aMinuteMs }: { mark?: string | null; patienceMs?: number } = {},
): Promise<Database> {
  const { patiently, inOrder } = patienceWith(path, patienceMs);
  const database = await patiently(() => {
    refuseOther(path, mark);
    return openFile(path);
  });
  const file = path === inMemory ? noFile : ownFile(path, mark);
  const db = new Kysely<Tables>({ dialect: new ImmediateDialect({ database }) });
  return {
    db,
    path,
    mark: file.mark,
    trouble: file.trouble,
    patiently,
    // One writer at a time in the whole file, whichever club it is.
    write: (_clubId, work) =>
      inOrder(async () => {
        file.refuseInTrouble();
        const done = await db.transaction().execute(work);
        // It may have gone meanwhile, and what was just written with it.
        file.refuseInTrouble();
        return done;
      }),
    read: (work) => db.transaction().setAccessMode('read only').execute(work),
  };
}

/** A large import is done by then. */
const aMinuteMs = 60_000;

function openFile(path: string): SqliteFile.Database {
  if (path !== inMemory) {
    mkdirSync(dirname(path), { recursive: true });
    // Bodies and birth dates of people, minors among them: a new file is for its owner's eyes only.
    closeSync(openSync(path, 'a', 0o600));
  }
  // SQLite itself would wait by standing still, and with it everybody whom this thread answers.
  const database = new SqliteFile(path, { timeout: 0 });
  try {
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
    database.pragma('foreign_keys = ON');
    return database;
  } catch (error) {
    database.close();
    throw error;
  }
}

/** SQLite's name for a database without a file. */
const inMemory = ':memory:';

class ImmediateDialect extends SqliteDialect {
  readonly #config: SqliteDialectConfig;

  constructor(config: SqliteDialectConfig) {
    super(config);
    this.#config = config;
  }

  override createDriver(): Driver {
    return new ImmediateDriver(this.#config);
  }

  override createAdapter(): DialectAdapter {
    return new WholeMigrationAdapter();
  }
}

/** SQLite can take back what a transaction did to its tables: a migration that is cut off leaves the file as it was. */
class WholeMigrationAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

/**
 * Takes the write lock at the start: a transaction that reads first could otherwise fail when it comes to write. One that only
 * reads waits for no writer.
 */
class ImmediateDriver extends SqliteDriver {
  override async beginTransaction(
    connection: DatabaseConnection,
    { accessMode }: TransactionSettings = {},
  ): Promise<void> {
    const begin = accessMode === 'read only' ? 'begin' : 'begin immediate';
    await connection.executeQuery(CompiledQuery.raw(begin));
  }
}
