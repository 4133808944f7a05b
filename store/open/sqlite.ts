import { accessSync, closeSync, constants, existsSync, mkdirSync, openSync } from 'node:fs';
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
  SqliteDriver,
  type Transaction,
  type TransactionSettings,
} from 'kysely';
import { Refusal } from '../Refusal.ts';
import type { Tables } from '../schema.ts';
import { catchUp } from './catchUp.ts';
import { copyClub } from './copyClub.ts';
import type { Database } from './Database.ts';
import { fileFault, isDamage, notOnDisk } from './fileFault.ts';
import { lookAtFile } from './lookAtFile.ts';
import { makeWhole } from './makeWhole.ts';
import { noFile, ownFile, refuseOther } from './ownFile.ts';
import { patienceWith } from './patience.ts';
import { preparedOnce } from './preparedOnce.ts';
import { sharedSync } from './sharedSync.ts';
import { dataToDisk } from './syncToDisk.ts';

export interface HowOpened {
  /** What tells the file that is meant from another at the same path; whoever opened it first has looked through it. */
  mark?: string | null;
  /** Why nothing may be written to it, as whoever opened it first knows. */
  trouble?: string | null;
  /** How long what something else holds is waited for. */
  patienceMs?: number;
}

/**
 * Opens an SQLite file, or makes it, so that an acknowledged write is on the disk: each transaction is in the write-ahead log, and that
 * log is brought to the disk for all who wait for it before any of them hears of it. What something else holds is waited for without
 * standing still. A file that is damaged, or that this user may not write to, is opened to be read alone.
 */
export async function openSqlite(
  path: string,
  { mark = null, trouble: known = null, patienceMs = aMinuteMs }: HowOpened = {},
): Promise<Database> {
  const { patiently, inOrder, behindWrites } = patienceWith(path, patienceMs);
  const { database, trouble: found } = await patiently(() => {
    refuseOther(path, mark);
    return inWords(path, () => openFile(path, known, mark !== null));
  });
  const file = path === inMemory ? noFile : ownFile(path, mark);
  let stopped = found;
  const trouble = () => stopped ?? file.trouble();
  const refuseInTrouble = () => {
    const sentence = trouble();
    if (sentence !== null) throw new Refusal('unavailable', '', sentence);
  };
  const told = (error: unknown): unknown => {
    const sentence = fileFault(path, error);
    if (sentence === null) return error;
    if (isDamage(error)) stopped ??= sentence;
    return new Refusal('unavailable', '', sentence);
  };
  const db = new Kysely<Tables>({ dialect: new ImmediateDialect({ database }, told) });
  const syncLog = sharedSync(path === inMemory ? async () => {} : () => dataToDisk(`${path}-wal`));
  async function onDisk(): Promise<void> {
    await syncLog().catch((error: unknown) => {
      // A disk that refused once may say yes the next time, without having what was written (fsync(2), "errors").
      if (file.trouble() === null) stopped ??= notOnDisk(path, error);
    });
    // It may have gone meanwhile, and what was just written with it.
    refuseInTrouble();
  }
  /** One writer at a time in the whole file, whichever club it is. */
  async function write<T>(work: () => Promise<T>): Promise<T> {
    const done = await inOrder(async () => {
      refuseInTrouble();
      return work().catch((error: unknown) => {
        // What is kept beside the file may be refused by the disk as the file is.
        throw told(error);
      });
    });
    // Outside the line: the next one writes meanwhile.
    await onDisk();
    return done;
  }

  /**
   * Opens the file once more, with another at hand as `beside`. What comes from there was held against itself there: here foreign keys do not
   * ask it of each row again, and a whole table can go over as it is.
   */
  async function withBeside<T>(beside: string, use: (own: Kysely<Tables>) => Promise<T>): Promise<T> {
    const { database: again } = await patiently(() => inWords(path, () => openFile(path, null, true)));
    try {
      again.pragma('foreign_keys = OFF');
      again.prepare('attach ? as beside').run(beside);
      return await use(new Kysely<Tables>({ dialect: new ImmediateDialect({ database: again }, told) }));
    } finally {
      again.close();
    }
  }

  const writeBeside: Database['writeBeside'] = ({ beside, keptAs }, _clubId, work) =>
    makeWhole(keptAs, async (copy, finish) => {
      try {
        refuseInTrouble();
        copyClub(path, copy);
      } catch (error) {
        throw told(error);
      }
      const replace = (trx: Transaction<Tables>) => {
        catchUp(copy, path);
        finish();
        return work(trx);
      };
      return withBeside(beside, (own) => write(() => own.transaction().execute(replace)));
    });

  return {
    db,
    isOneConnection: true,
    path,
    mark: file.mark,
    trouble,
    stopWriting(why) {
      stopped ??= why;
    },
    patiently,
    write: (_clubId, work) => write(() => db.transaction().execute(work)),
    writeBeside: path === inMemory ? null : writeBeside,
    behindWrites,
    read: (work) => db.transaction().setAccessMode('read only').execute(work),
  };
}

/** A large import is done by then. */
const aMinuteMs = 60_000;

/** Says what the disk or the database refuses as one sentence; what is waited for goes on as it is. */
function inWords<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const sentence = fileFault(path, error);
    throw sentence === null ? error : new Refusal('unavailable', '', sentence);
  }
}

function openFile(path: string, known: string | null, isLookedAt: boolean) {
  let trouble = known;
  if (path !== inMemory && !isLookedAt) {
    if (existsSync(path)) trouble = lookAtFile(path) ?? whyNotWritten(path);
    else makeFile(path);
  }
  // SQLite itself would wait by standing still, and with it everybody whom this thread answers.
  const database = new SqliteFile(path, { timeout: 0, readonly: trouble !== null });
  try {
    if (trouble === null) {
      database.pragma('journal_mode = WAL');
      // A transaction does not wait for the disk; whoever made it does, see onDisk. Whatever else SQLite brings to the disk it still does.
      database.pragma('synchronous = NORMAL');
    }
    database.pragma('foreign_keys = ON');
    database.pragma(`cache_size = -${cacheKb}`);
    database.pragma(`wal_autocheckpoint = ${longestLogPages}`);
    return { database, trouble };
  } catch (error) {
    database.close();
    throw error;
  }
}

/** A log of two years of forty lifters; SQLite's own 2 MB would fetch the pages of one lifter's log anew each time. */
const cacheKb = 64_000;

/** Beyond these 64 MB whoever writes takes the log over into the file and waits for the disk; the server does that before, elsewhere. */
const longestLogPages = 16_000;

function whyNotWritten(path: string): string | null {
  try {
    for (const place of [path, dirname(path)]) accessSync(place, constants.W_OK);
    return null;
  } catch (error) {
    return fileFault(path, error);
  }
}

function makeFile(path: string): void {
  mkdirSync(dirname(path), { recursive: true });
  // Bodies and birth dates of people, minors among them: a new file is for its owner's eyes only.
  closeSync(openSync(path, 'a', 0o600));
}

/** SQLite's name for a database without a file. */
const inMemory = ':memory:';

/** Turns what the disk or the database refuses into the error that is to be told. */
type Told = (error: unknown) => unknown;

class ImmediateDialect extends SqliteDialect {
  readonly #config: { database: SqliteFile.Database };
  readonly #told: Told;

  constructor(config: { database: SqliteFile.Database }, told: Told) {
    super({ database: preparedOnce(config.database) });
    this.#config = config;
    this.#told = told;
  }

  override createDriver(): Driver {
    return new ImmediateDriver(this.#config, this.#told);
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
  readonly #database: SqliteFile.Database;
  readonly #told: Told;

  constructor(config: { database: SqliteFile.Database }, told: Told) {
    super({ database: preparedOnce(config.database) });
    this.#database = config.database;
    this.#told = told;
  }

  override async acquireConnection(): Promise<DatabaseConnection> {
    const connection = await super.acquireConnection();
    const told = this.#told;
    return {
      async executeQuery<Row>(query: CompiledQuery) {
        try {
          return await connection.executeQuery<Row>(query);
        } catch (error) {
          throw told(error);
        }
      },
      streamQuery: (query, chunkSize) => connection.streamQuery(query, chunkSize),
    };
  }

  override async beginTransaction(
    connection: DatabaseConnection,
    { accessMode }: TransactionSettings = {},
  ): Promise<void> {
    const begin = accessMode === 'read only' ? 'begin' : 'begin immediate';
    await connection.executeQuery(CompiledQuery.raw(begin));
  }

  /** A disk that is full has taken the transaction back already (SQLite, "Response To Errors Within A Transaction"). */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#database.inTransaction) await super.rollbackTransaction(connection);
  }
}
