import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import SqliteFile from 'better-sqlite3';

/**
 * What one durable insert of the database library alone takes, in ms each: rows as large as a set, in a file with the journal of a club's,
 * so many a second as the crowd logs.
 */
export async function bareInsert(
  folder: string,
  { aSecond, seconds }: { aSecond: number; seconds: number },
): Promise<number[]> {
  const file = new SqliteFile(join(folder, 'bare.sqlite'));
  file.pragma('journal_mode = WAL');
  file.pragma('synchronous = FULL');
  file.exec('create table if not exists line (id integer primary key, text text not null)');
  const insert = file.prepare('insert into line (text) values (?)');
  const text = 'x'.repeat(SET_BYTES);
  const lasted: number[] = [];
  const from = performance.now();
  for (let i = 0; i < aSecond * seconds; i += 1) {
    const due = from + (1000 * i) / aSecond;
    await pause(Math.max(0, due - performance.now()));
    const begun = performance.now();
    insert.run(text);
    lasted.push(performance.now() - begun);
  }
  file.close();
  return lasted;
}

/** About what a logged set takes in its row and its change. */
const SET_BYTES = 700;
