import { closeSync, fsyncSync, openSync, statSync } from 'node:fs';

/** Waits until a file, or the names in a folder, are on the disk. */
export function syncToDisk(path: string): void {
  // Windows cannot open a folder, and keeps names without being asked.
  if (process.platform === 'win32' && statSync(path).isDirectory()) return;
  const at = openSync(path, 'r');
  try {
    fsyncSync(at);
  } finally {
    closeSync(at);
  }
}
