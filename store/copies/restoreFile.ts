import { copyFileSync, existsSync, renameSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import SqliteFile from 'better-sqlite3';
import { readArchive } from '#contract/archive/readArchive.ts';
import { filePieces } from '../filePieces.ts';
import { holdFile } from '../open/holdFile.ts';
import { makeWhole } from '../open/makeWhole.ts';
import { syncToDisk } from '../open/syncToDisk.ts';
import { openStore } from '../openStore.ts';
import { Refusal } from '../Refusal.ts';
import type { Writer } from '../Writer.ts';
import { type CopyFile, isArchive } from './keptCopies.ts';

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
 * Puts a copy where the club's file is damaged or gone: one that is a club's file whole, log of changes and all. The damaged file is moved aside, with what SQLite
 * keeps beside it, and not deleted; says where to, null where there was none. Whoever is killed meanwhile leaves either what was there or a restoring
 * that the next who opens the club brings to its end. Refused while a server has the file.
 */
export async function restoreFile(
  path: string,
  copy: Pick<CopyFile, 'name' | 'path'>,
  writer: Writer,
): Promise<string | null> {
  return holding(path, async () => {
    await makeWhole(waitingFor(path), async (beside) => {
      if (isArchive(copy)) await clubOfArchive(beside, copy, writer);
      else copyFileSync(copy.path, beside);
      if (!isWholeFile(beside)) throw unusable(copy, 'it is damaged');
    });
    return takePlace(path);
  });
}

/** Ends a restoring that was cut short once its copy was whole; to be called before a club is opened. */
export async function finishRestore(path: string): Promise<void> {
  if (existsSync(waitingFor(path))) await holding(path, async () => takePlace(path));
}

/** Where a copy that is whole waits for the file's place. */
function waitingFor(path: string): string {
  return `${path}.restored`;
}

async function clubOfArchive(
  beside: string,
  copy: Pick<CopyFile, 'name' | 'path'>,
  { clubId, who }: Writer,
): Promise<void> {
  const read = readArchive(filePieces(copy.path));
  if ('problems' in read) throw unusable(copy, read.problems[0].message);
  const house = await openStore(beside);
  try {
    await house.found(clubId);
    const { records, ...rest } = read.content;
    await (await house.forClub(clubId, who)).importRecords(records, rest);
  } finally {
    await house.close();
  }
}

/** Who holds the file is alone in moving it. Whatever was moved before a program was ended keeps its name when the next goes on. */
function takePlace(path: string): string | null {
  const copy = waitingFor(path);
  if (!existsSync(copy)) return null;
  const aside = `${path}.damaged-${statSync(copy).mtime.toISOString().replaceAll(/[:.]/g, '-')}`;
  for (const end of ['', '-wal', '-shm']) if (existsSync(path + end)) renameSync(path + end, aside + end);
  renameSync(copy, path);
  syncToDisk(dirname(resolve(path)));
  return existsSync(aside) ? aside : null;
}

async function holding<T>(path: string, work: () => Promise<T>): Promise<T> {
  const hold = holdFile(path);
  if ('heldAt' in hold) {
    const where = hold.heldAt === null ? '' : ` at ${hold.heldAt}`;
    const sentence = `Another Rackwright has ${resolve(path)}${where}, so that no copy can take its place; nothing was changed. End that one first, then do this again.`;
    throw new Refusal('unavailable', '', sentence);
  }
  try {
    return await work();
  } finally {
    hold.release();
  }
}

function unusable({ name }: Pick<CopyFile, 'name'>, why: string): Refusal {
  const sentence = `The copy ${name} was not restored: ${why}. Nothing was changed; choose another one, "rackwright snapshot --list" names them.`;
  return new Refusal('conflict', 'name', sentence);
}
