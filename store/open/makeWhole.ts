import { existsSync, linkSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { syncToDisk } from './syncToDisk.ts';

/**
 * Makes a file under a name beside its own, and gives it that when it is whole and on the disk: whoever is killed meanwhile leaves
 * nothing that could be taken for the file. One that came to stand at `path` meanwhile stays. Whoever still has something to do that the
 * file must be there for calls `finish` before that.
 */
export async function makeWhole<Result>(
  path: string,
  make: (beside: string, finish: () => void) => Promise<Result>,
): Promise<Result> {
  const folder = dirname(resolve(path));
  sweepAway(folder);
  const beside = `${path}.making-${process.pid}-${++made}`;
  let isNamed = false;
  const finish = () => {
    syncToDisk(beside);
    name(beside, path);
    syncToDisk(folder);
    isNamed = true;
  };
  try {
    const result = await make(beside, finish);
    if (!isNamed) finish();
    return result;
  } finally {
    removeAll(beside);
  }
}

const making = /\.making-(\d+)-\d+(-wal|-shm|-journal)?$/;
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
function sweepAway(folder: string): void {
  if (!existsSync(folder)) return;
  for (const left of readdirSync(folder)) {
    const pid = Number(making.exec(left)?.[1]);
    if (pid > 0 && !isAlive(pid)) rmSync(join(folder, left), { force: true });
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
