import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { snapshotFolderOf } from '../copies/keptCopies.ts';

/**
 * What a fault of the disk or the database means for a club's file, as one sentence with the way out; null: it is none of them, and
 * none that is waited for.
 */
export function fileFault(path: string, error: unknown): string | null {
  const code = codeOf(error);
  const file = `The club's file ${resolve(path)}`;
  if (isDamage(error)) return damaged(path, 'it cannot be read as it should be');
  if (/^(SQLITE_FULL|ENOSPC|EDQUOT|EFBIG|SQLITE_IOERR_(WRITE|FSYNC|TRUNCATE|SHMSIZE))$/.test(code))
    return `${file} cannot be written: the disk is full or takes no more. What was saved before is untouched, and this change is not in it; make room, then do it again.`;
  if (code.startsWith('SQLITE_IOERR'))
    return `${file} cannot be read or written: the disk reports a fault (${code}). What was saved before is untouched; download the archive while it can be read, and look at the disk.`;
  if (code.startsWith('SQLITE_READONLY') || /^(EACCES|EPERM|EROFS)$/.test(code))
    return `${file} cannot be written: this user may not write to it or to its folder, so nothing is saved. Allow it and start again, or name another file with --club.`;
  if (code.startsWith('SQLITE_CANTOPEN'))
    return `${file} cannot be opened: this user may not read it, or may not write to its folder. Nothing was changed; allow it, or name another file with --club.`;
  return null;
}

/** What is told where the disk did not confirm what was written. It can be read, and yet be gone when the machine starts again. */
export function notOnDisk(path: string, error: unknown): string {
  return `The disk did not confirm what was just written to the club's file ${resolve(path)} (${codeOf(error)}), so nothing is saved any more: the last change may be lost, what was saved before is not. Download the archive, look at the disk, then end the program and start it again.`;
}

/** Whether pages of the file are not what they should be. */
export function isDamage(error: unknown): boolean {
  return /^SQLITE_(CORRUPT|NOTADB)/.test(codeOf(error));
}

/** What a damaged file is told by; `how` says what is wrong with it. */
export function damaged(path: string, how: string): string {
  return `The club's file ${resolve(path)} is damaged (${how}), so nothing is saved any more. What can still be read can be looked at and downloaded as an archive: do that first; then end the program and put a good copy in the file's place. ${wayOut(path)}`;
}

/** The same of one in which nothing can be read. */
export function beyondReading(path: string, how: string): string {
  return `The club's file ${resolve(path)} is damaged (${how}) and cannot be read. It was not changed; put a good copy in its place. ${wayOut(path)}`;
}

/** What tells that a club was kept in a file that is not there, as one sentence with the way out; null: nothing does. */
export function whatIsLeft(path: string): string | null {
  const file = resolve(path);
  const copy = newestCopy(path);
  if (existsSync(`${path}-wal`))
    return `The club's file ${file} is gone, but ${basename(path)}-wal, which holds what was saved last, is still beside it. Nothing was changed: put the file back. ${copy ?? noCopy} For a new club name another file with --club.`;
  return copy === null
    ? null
    : `The club's file ${file} is gone, but copies of it are kept. Nothing was changed. ${copy} For a new club name another file with --club, or move the copies away.`;
}

/** The newest copy that is kept of the club and how it takes the file's place. */
function wayOut(path: string): string {
  return newestCopy(path) ?? noCopy;
}

const noCopy = 'No copy of it is kept beside it.';

/** The moment is in its name. */
function newestCopy(path: string): string | null {
  const snapshot = newest(snapshotFolderOf(path), `${basename(path)}.snapshot-`);
  if (snapshot !== null)
    return `The newest snapshot is ${snapshot}: "rackwright restore newest" puts it in the file's place.`;
  const replaced = newest(dirname(resolve(path)), `${basename(path)}.before-restore-`);
  return replaced === null
    ? null
    : `The newest copy is ${replaced}: "rackwright restore ${replaced}" puts it in the file's place.`;
}

function newest(folder: string, start: string): string | null {
  if (!existsSync(folder)) return null;
  const kept = readdirSync(folder).filter((name) => name.startsWith(start));
  return kept.toSorted().at(-1) ?? null;
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}
