import { closeSync, existsSync, fstatSync, openSync, readSync } from 'node:fs';
import { resolve } from 'node:path';
import SqliteFile from 'better-sqlite3';
import { Refusal } from '../Refusal.ts';
import { beyondReading, damaged, isDamage } from './fileFault.ts';

/**
 * Looks at a file that is to be opened as a club's before anything is written to it: refused where it is none. Gives back why it is
 * damaged, as one sentence; null: it is sound, as far as a look at every page tells. A second or so for a gigabyte.
 */
export function lookAtFile(path: string): string | null {
  refuseOtherKind(path);
  const hadLog = existsSync(`${path}-wal`);
  const file = new SqliteFile(path, { readonly: true, timeout: 0 });
  try {
    const tables = tablesOf(file);
    if (tables.includes(ours)) {
      const damage = damageIn(path, file, 'quick_check');
      if (damage !== null) file.prepare('select * from club').all();
      return damage;
    }
    file.close();
    if (!hadLog) takeLogAway(path);
    throw tables.length === 0
      ? empty(path, 'holds no tables')
      : otherKind(path, 'it is the database of another program');
  } catch (error) {
    throw isDamage(error) ? new Refusal('unavailable', '', beyondReading(path, message(error))) : error;
  } finally {
    file.close();
  }
}

/** The same with every index held against its table, which takes some ten times as long. */
export function checkWhole(path: string): string | null {
  const file = new SqliteFile(path, { readonly: true, timeout: aMinuteMs });
  try {
    return damageIn(path, file, 'integrity_check');
  } finally {
    file.close();
  }
}

const aMinuteMs = 60_000;

function tablesOf(file: SqliteFile.Database): unknown[] {
  return file.prepare(`select name from sqlite_master where type = 'table'`).pluck().all();
}

/** Who may only read makes an empty write-ahead log and leaves it; who may write takes it away, if nobody else has opened the file. */
function takeLogAway(path: string): void {
  const file = new SqliteFile(path, { timeout: 0 });
  tablesOf(file);
  file.close();
}

function damageIn(path: string, file: SqliteFile.Database, check: string): string | null {
  let found: string;
  try {
    found = String(file.pragma(`${check}(1)`, { simple: true }));
  } catch (error) {
    if (!isDamage(error)) throw error;
    found = message(error);
  }
  return found === 'ok' ? null : damaged(path, found.split('\n').slice(0, 2).join(' '));
}

/** Every club's file has had it from its first table on: it says which steps its tables have taken. */
const ours = 'kysely_migration';
/** SQLite's "Database File Format", 1.3. */
const magic = 'SQLite format 3\0';

function refuseOtherKind(path: string): void {
  const at = openSync(path, 'r');
  try {
    const { size } = fstatSync(at);
    if (size === 0) throw empty(path, 'is empty');
    const head = Buffer.alloc(magic.length);
    readSync(at, head, 0, magic.length, 0);
    if (head.toString('latin1') !== magic) throw otherKind(path, 'it is another kind of file');
  } finally {
    closeSync(at);
  }
}

function otherKind(path: string, why: string): Refusal {
  const sentence = `${resolve(path)} cannot be opened as a club: ${why}. It was not changed; name the club's file with --club, or a name that is free for a new one.`;
  return new Refusal('unavailable', '', sentence);
}

function empty(path: string, how: string): Refusal {
  const sentence = `${resolve(path)} ${how}, so it is no club; a start that was cut short or a full disk may have left it. It was not changed: put a good copy in its place or take it away, then start again.`;
  return new Refusal('unavailable', '', sentence);
}

function message(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
