import { readdirSync, readFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { newClubPath } from './newClubPath.ts';
import { smallClubKept } from './smallClub.ts';

// Each file was dumped from a club as its version kept it, by Python's sqlite3 iterdump; it stays as it is.
const versions = new URL('./versions/', import.meta.url);
export const dumps = readdirSync(versions).sort();

/** The small club as far as a dump can hold it: nothing of kinds that had no table yet. */
export function oldClub(dump: string): ClubRecords {
  const text = readFileSync(new URL(dump, versions), 'utf8');
  return smallClubKept(text, (kind) => text.includes(`CREATE TABLE "${kind}" (`));
}

/** A club's file as its version kept it. */
export function clubOf(dump: string): string {
  const path = newClubPath();
  writeOldClub(path, dump);
  return path;
}

export function writeOldClub(path: string, dump: string): void {
  const old = new Database(path);
  // Tables stand in the dump by the alphabet, not owners first.
  old.pragma('foreign_keys = OFF');
  old.exec(readFileSync(new URL(dump, versions), 'utf8'));
  old.close();
}
