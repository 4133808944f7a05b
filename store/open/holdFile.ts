import { closeSync, existsSync, openSync } from 'node:fs';
import SqliteFile from 'better-sqlite3';

/** A hold on a club's file for one server at a time. */
export interface Hold {
  /** Tells who asks for the hold next where this server is. */
  tell(address: string): void;
  release(): void;
}

/**
 * Takes the hold on a club's file, or says where the server is that has it. It is the lock of a small database beside the file: it ends
 * with its process, however that ends, and others can read under it what is told.
 */
export function holdFile(path: string): Hold | { heldAt: string | null } {
  const beside = `${path}.served`;
  if (!existsSync(beside)) closeSync(openSync(beside, 'a', 0o600));
  const lock = new SqliteFile(beside, { timeout: 0 });
  const take = () => lock.exec('begin immediate');
  try {
    take();
    lock.exec('create table if not exists served (address text)');
    lock.exec('delete from served');
    lock.exec('commit');
    take();
  } catch (error) {
    const held = isLocked(error) ? { heldAt: addressIn(lock) } : null;
    lock.close();
    if (held === null) throw error;
    return held;
  }
  return {
    tell(address) {
      lock.prepare('insert into served values (?)').run(address);
      lock.exec('commit');
      take();
    },
    release: () => void lock.close(),
  };
}

function addressIn(lock: SqliteFile.Database): string | null {
  try {
    return (lock.prepare('select address from served').pluck().get() as string | undefined) ?? null;
  } catch {
    // It is just being written.
    return null;
  }
}

function isLocked(error: unknown): boolean {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_BUSY');
}
