import { resolve } from 'node:path';

/** Why a club cannot be opened, in one sentence: the store's own, the disk's in a coach's words, or that the program itself lacks a part. */
export function whyNotOpenClub(file: string, error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const said = error instanceof Error ? error.message : String(error);
  if (error instanceof Error && error.name === 'Refusal') return said;
  if (code === 'ERR_DLOPEN_FAILED' || /better.sqlite3/.test(said))
    return `The part of the program that reads club files is missing or was built for another version of Node than this one (${process.version}); the club's file was not touched. "npm rebuild better-sqlite3" in the program's folder builds it anew, as "npm start" does by itself.`;
  return `${resolve(file)} cannot be opened as a club: ${whyNot(code) ?? said}`;
}

function whyNot(code: string): string | null {
  switch (code) {
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return 'this user may not write there.';
    case 'ENOENT':
    case 'ENOTDIR':
      return 'nothing can be written at that place.';
    case 'EISDIR':
      return 'it is a folder.';
    case 'ENOSPC':
    case 'EDQUOT':
    case 'EFBIG':
      return 'the disk is full.';
    default:
      return null;
  }
}
