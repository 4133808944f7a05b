import { rmSync } from 'node:fs';
import SqliteFile from 'better-sqlite3';
import { kindNames } from '#contract/records/allKinds.ts';
import { copyClub } from './copyClub.ts';

/**
 * Brings a copy of a club's file (`copyClub`) up to what the file holds now: what was done since goes over, change by change, and not all
 * of it again. To be called while nobody can write to the club; it is on the disk when this returns.
 */
export function catchUp(copy: string, clubPath: string): void {
  const file = new SqliteFile(copy, { fileMustExist: true });
  let isAnother: boolean;
  try {
    // Rows go over in no order; together they fit each other as they do in the club.
    file.pragma('foreign_keys = OFF');
    file.prepare('attach ? as club').run(clubPath);
    isAnother = !file.transaction(() => bringOver(file))();
  } finally {
    file.close();
  }
  if (!isAnother) return;
  rmSync(copy);
  copyClub(clubPath, copy);
}

/** False, and nothing done, where the club was replaced since. */
function bringOver(file: SqliteFile.Database): boolean {
  file.exec(`create temp table since as select * from club."change" as now where seq >
    coalesce((select max(seq) from main."change" as had where had."clubId" = now."clubId"), 0)`);
  if (file.prepare('select 1 from since where replaced = 1').get() !== undefined) return false;
  file.exec('insert into main."change" select * from since');
  for (const kind of kindNames)
    file
      .prepare(
        `insert or replace into main."${kind}" select * from club."${kind}" where ("clubId", id) in (
           select "clubId", json_extract(entry.value, '$.id') from since, json_each(entries) as entry
           where json_extract(entry.value, '$.kind') = ?)`,
      )
      .run(kind);
  file.exec(`insert or replace into main."loggedSet" select * from club."loggedSet" where ("clubId", id) in (
      select "clubId", counts.value from since, json_each(sets, '$.counts') as counts
      union select "clubId", struck.value from since, json_each(sets, '$.struck') as struck)`);
  for (const appended of ['prescription', 'takenPlan'])
    file.exec(`insert into main."${appended}" select * from club."${appended}"
      where ("clubId", id) not in (select "clubId", id from main."${appended}")`);
  return true;
}
