import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { copyClub } from '../open/copyClub.ts';
import { syncToDisk } from '../open/syncToDisk.ts';
import { Refusal } from '../Refusal.ts';
import { keptCopies, snapshotName } from './keptCopies.ts';
import { snapshotsToKeep } from './snapshotsToKeep.ts';

/**
 * Copies the club's file as it stands at one moment, whoever writes meanwhile, and removes older snapshots that are no longer kept.
 * The copy gets its name once it was opened, checked page by page and counted, and is on the disk; before that it is not there. To be
 * called where nobody waits: it stands still until it is done. `clubPath` must be a file. Refused with one sentence where the disk or
 * the club's file does not allow it.
 */
export async function takeSnapshot(clubPath: string, folder: string): Promise<{ name: string }> {
  if (!existsSync(clubPath))
    throw new Refusal('conflict', '', `No snapshot was taken: the file of the club, ${clubPath}, is gone.`);
  const half = join(folder, `.${process.pid}-${Date.now()}.half`);
  try {
    // Not the folders above it: where a second disk is not there, the first must not be filled in its place.
    if (!existsSync(folder)) mkdirSync(folder, { mode: 0o700 });
    removeHalves(folder);
    const { seq } = copyClub(clubPath, half);
    const name = snapshotName(clubPath, new Date(), seq);
    renameSync(half, join(folder, name));
    syncToDisk(folder);
    await removeOld(clubPath, folder);
    return { name };
  } catch (error) {
    throw new Refusal('conflict', '', `No snapshot was taken into ${folder}: ${whyNot(error)}`);
  } finally {
    for (const left of [half, `${half}-journal`]) if (existsSync(left)) rmSync(left);
  }
}

/** What a program that was ended in the midst of it has left. */
function removeHalves(folder: string): void {
  for (const name of readdirSync(folder).filter((one) => halfName.test(one))) {
    const path = join(folder, name);
    const age = Date.now() - (statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Date.now());
    if (age > longestMs) rmSync(path, { force: true });
  }
}

const halfName = /^\.\d+-\d+\.half/;
/** No copy takes so long. */
const longestMs = 3_600_000;

/** Of the newest the youngest days and hours stay; the one that was just taken always does. */
async function removeOld(clubPath: string, folder: string): Promise<void> {
  const snapshots = (await keptCopies(clubPath, folder)).filter(({ kind }) => kind === 'snapshot');
  const stay = snapshotsToKeep(snapshots.map(({ takenAt }) => takenAt));
  for (const { path, takenAt } of snapshots) if (!stay.has(takenAt)) rmSync(path, { force: true });
}

function whyNot(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'ENOSPC' || code === 'SQLITE_FULL') return 'the disk is full.';
  if (['EACCES', 'EPERM', 'EROFS', 'SQLITE_READONLY', 'SQLITE_CANTOPEN'].includes(code))
    return 'this user may not write there.';
  if (code === 'ENOENT' || code === 'ENOTDIR') return 'there is no such folder.';
  if (code.startsWith('SQLITE_BUSY')) return 'something else holds the club for too long.';
  if (code === 'SQLITE_CORRUPT' || code === 'SQLITE_NOTADB') return 'the file of the club is damaged.';
  return error instanceof Error ? error.message : String(error);
}
