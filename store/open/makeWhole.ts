import {
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';

/**
 * Makes a file under a name beside its own, and gives it that when it is whole and on the disk: whoever is killed meanwhile leaves
 * nothing that could be taken for the file. One that came to stand at `path` meanwhile stays.
 */
export async function makeWhole(path: string, make: (beside: string) => Promise<void>): Promise<void> {
  const folder = dirname(resolve(path));
  mkdirSync(folder, { recursive: true });
  sweepAway(path);
  const beside = `${path}${making}${process.pid}-${++made}`;
  try {
    await make(beside);
    sync(beside);
    name(beside, path);
    sync(folder);
  } finally {
    removeAll(beside);
  }
}

const making = '.making-';
let made = 0;

/** A link is made only where nothing stands yet. Some disks have none: there a moment remains in which another could come. */
function name(beside: string, path: string): void {
  try {
    linkSync(beside, path);
  } catch (error) {
    if (existsSync(path)) return;
    if (!(error instanceof Error && 'code' in error && error.code !== 'ENOSPC')) throw error;
    renameSync(beside, path);
  }
}

/** What processes left behind that are no more. */
function sweepAway(path: string): void {
  const start = `${basename(path)}${making}`;
  for (const left of readdirSync(dirname(resolve(path)))) {
    const pid = left.startsWith(start) ? Number.parseInt(left.slice(start.length), 10) : Number.NaN;
    if (pid > 0 && !isAlive(pid)) rmSync(join(dirname(path), left), { force: true });
  }
}

function isAlive(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

/** A database with what belongs to it. */
function removeAll(path: string): void {
  for (const end of ['', '-wal', '-shm', '-journal']) rmSync(`${path}${end}`, { force: true });
}

function sync(path: string): void {
  const at = openSync(path, 'r');
  try {
    fsyncSync(at);
  } finally {
    closeSync(at);
  }
}
