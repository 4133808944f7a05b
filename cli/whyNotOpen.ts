/** What the disk said of a file, in a coach's words where it is one of the usual troubles. */
export function whyNotOpen(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : null;
  if (code === 'ENOENT' || code === 'ENOTDIR') return 'there is no such file or folder.';
  if (code === 'EISDIR') return 'it is a folder.';
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') return 'this user may not open it.';
  if (code === 'ENOSPC' || code === 'EDQUOT' || code === 'EFBIG') return 'the disk is full.';
  return error instanceof Error ? error.message : String(error);
}
