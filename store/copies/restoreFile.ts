import { constants, copyFileSync, existsSync, renameSync } from 'node:fs';
import SqliteFile from 'better-sqlite3';

/** Whether a club's file is there, can be opened and is whole page by page. */
export function isWholeFile(path: string): boolean {
  let file: SqliteFile.Database | undefined;
  try {
    file = new SqliteFile(path, { readonly: true, fileMustExist: true });
    return file.pragma('quick_check', { simple: true }) === 'ok';
  } catch {
    return false;
  } finally {
    file?.close();
  }
}

/**
 * Moves a club's file that is damaged out of the way, with what SQLite keeps beside it, and says where to; null where there is none.
 * Nothing of it is deleted: somebody may still get something out of it.
 */
export function moveAside(path: string): string | null {
  const aside = `${path}.damaged-${new Date().toISOString().replaceAll(/[:.]/g, '-')}`;
  const wasThere = existsSync(path);
  for (const end of ['', '-wal', '-shm']) if (existsSync(path + end)) renameSync(path + end, aside + end);
  return wasThere ? aside : null;
}

/** Puts a snapshot where no club's file is, its log of changes and all. */
export function putSnapshot(snapshot: string, path: string): void {
  copyFileSync(snapshot, path, constants.COPYFILE_EXCL);
}
