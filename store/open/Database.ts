import type { Kysely, Transaction } from 'kysely';
import type { Tables } from '../schema.ts';

/** An open database. The queries are the same for every one; what each does in its own way is behind this door. */
export interface Database {
  db: Kysely<Tables>;
  /** Whether all that is asked of it goes through one connection, in a transaction or not. */
  isOneConnection: boolean;
  /** The file that holds it, or beside which files about it are kept. */
  path: string;
  /** What tells its file from another at the same path; null where there is none. */
  mark: string | null;
  /** Why nothing can be kept now, as one sentence; null: all is well. What was kept can still be read. */
  trouble(): string | null;
  /** From now on nothing is kept any more, for the reason that is given. */
  stopWriting(why: string): void;
  /** Tries again as long as something else holds the database; refused with one sentence where that takes too long. */
  patiently<T>(work: () => T | Promise<T>): Promise<T>;
  /** Runs a write as one transaction, alone among the writes to its club and in the order in which they come; on the disk when the promise resolves, refused in trouble. */
  write<T>(clubId: string, work: (trx: Transaction<Tables>) => Promise<T>): Promise<T>;
  /**
   * The same once all that is there just then stands in a copy at `keptAs`, with the tables of another file at hand as those of the schema
   * `beside`. Others write while the copy is made. Null: this database cannot do that.
   */
  writeBeside:
    | (<T>(
        files: { beside: string; keptAs: string },
        clubId: string,
        work: (trx: Transaction<Tables>) => Promise<T>,
      ) => Promise<T>)
    | null;
  /** Does what holds the database for long through another door of this program, behind every write that was asked for before: who writes meanwhile waits for its end, however long. */
  behindWrites<T>(work: () => Promise<T>): Promise<T>;
  /** Reads everything as it stood at one moment, whoever writes meanwhile. */
  read<T>(work: (trx: Transaction<Tables>) => Promise<T>): Promise<T>;
}
