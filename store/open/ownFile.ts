import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { Refusal } from '../Refusal.ts';

/** Whether the file that is open still stands at its path: what is written to one that does not is found by nobody again. */
export interface OwnFile {
  /** What tells the file from another at the same path, for who opens it once more. */
  mark: string | null;
  /** Why nothing can be kept; null: all is well. Two looks at the disk, of some millionths of a second. */
  trouble(): string | null;
}

/**
 * Knows a file that was just opened, by device and inode, and with it the write-ahead log beside it, which holds what was written last.
 * `expected` is the mark of the file that it is to be.
 */
export function ownFile(path: string, expected: string | null): OwnFile {
  const mark = expected ?? markOf(path);
  const log = `${path}-wal`;
  let logMark = markOf(log);
  function trouble(): string | null {
    const logNow = markOf(log);
    // It is made by the first who needs it.
    logMark ??= logNow;
    return markOf(path) === mark && logNow === logMark ? null : lost(path);
  }
  return { mark, trouble };
}

/** A database in memory is in no file that could be lost. */
export const noFile: OwnFile = { mark: null, trouble: () => null };

/** Throws where another file than the expected one, or none, stands at the path. */
export function refuseOther(path: string, expected: string | null): void {
  if (expected !== null && markOf(path) !== expected) throw new Refusal('unavailable', '', lost(path));
}

function markOf(path: string): string | null {
  const found = statSync(path, { bigint: true, throwIfNoEntry: false });
  return found ? `${found.dev} ${found.ino}` : null;
}

function lost(path: string): string {
  return `The club's file ${resolve(path)} was removed, moved or replaced while the program runs, so that nothing can be saved. Everything saved before can still be downloaded as an archive: do that first, then put the file back, or end the program and start it again.`;
}
