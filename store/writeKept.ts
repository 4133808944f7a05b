import { open, rm } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Writes a new file for its owner's eyes only; on the disk, its name too, when the promise resolves. Where that fails none is left. */
export async function writeKept(path: string, text: string): Promise<void> {
  const file = await open(path, 'wx', 0o600);
  try {
    await file.writeFile(text);
    await file.sync();
  } catch (error) {
    await rm(path, { force: true });
    throw error;
  } finally {
    await file.close();
  }
  // Windows cannot open a folder, and keeps names without being asked.
  if (process.platform === 'win32') return;
  const folder = await open(dirname(path), 'r');
  try {
    await folder.sync();
  } finally {
    await folder.close();
  }
}
