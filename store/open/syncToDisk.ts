import { closeSync, fdatasync, fsyncSync, openSync, statSync } from 'node:fs';
import { promisify } from 'node:util';

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

/** The same of what was written to a file, without standing still. Whoever wrote it may have it open otherwise. */
export async function dataToDisk(path: string): Promise<void> {
  const at = openSync(path, 'r+');
  try {
    await promisify(fdatasync)(at);
  } finally {
    closeSync(at);
  }
}
