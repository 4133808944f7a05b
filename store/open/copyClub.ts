import { closeSync, openSync } from 'node:fs';
import SqliteFile from 'better-sqlite3';
import { syncToDisk } from './syncToDisk.ts';

/**
 * Copies a club's file into a new one as it stands at one moment, whoever writes meanwhile; opens the copy, checks it page by page, counts it
 * and brings it to the disk. Says which change was the last in it. To be called where nobody waits: it stands still until it is done.
 */
export function copyClub(clubPath: string, copy: string): { seq: number } {
  const before = copyTo(copy, clubPath);
  return { seq: checkCopy(copy, before) };
}

/** What a club holds, counted; every one of them only grows, but for a club that is replaced. */
interface Counts {
  seq: number;
  changes: number;
  replaced: number;
}

function copyTo(half: string, clubPath: string): Counts {
  // People's bodies and birth dates: for the owner's eyes only, from the first byte.
  closeSync(openSync(half, 'wx', 0o600));
  const club = new SqliteFile(clubPath, { readonly: true, fileMustExist: true, timeout: patienceMs });
  try {
    const before = countsOf(club);
    club.prepare('vacuum into ?').run(half);
    return before;
  } finally {
    club.close();
  }
}

/** The number of the last change in it. */
function checkCopy(half: string, before: Counts): number {
  syncToDisk(half);
  const copy = new SqliteFile(half, { readonly: true, fileMustExist: true });
  try {
    const said = copy.pragma('integrity_check', { simple: true });
    if (said !== 'ok') throw new Error(`The copy is damaged: ${String(said)}.`);
    if ((copy.pragma('foreign_key_check') as unknown[]).length > 0)
      throw new Error('In the copy something names what is not there.');
    const counts = countsOf(copy);
    if (counts.seq < before.seq || counts.changes < before.changes || counts.replaced < before.replaced)
      throw new Error('The copy holds less than the club.');
    return counts.seq;
  } finally {
    copy.close();
  }
}

function countsOf(file: SqliteFile.Database): Counts {
  const counts =
    'select coalesce(max(seq), 0) as seq, count(*) as changes, coalesce(sum(replaced), 0) as replaced from "change"';
  return file.prepare(counts).get() as Counts;
}

/** An import holds the file for a while; a copy has time. */
const patienceMs = 60_000;
