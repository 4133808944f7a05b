import type { Kysely } from 'kysely';
import type { ClubState } from '#contract/changes/clubState.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { latestStanding, touchesRecords } from './changeLog.ts';
import type { Tables } from './schema.ts';

/**
 * The whole club in memory, read again only when a change has touched its records: sets are logged all the time, records seldom changed.
 * To be called within one reading.
 */
export function keptRecords(
  clubId: string,
  read: (db: Kysely<Tables>) => Promise<ClubRecords>,
): (db: Kysely<Tables>) => Promise<ClubState> {
  let kept: ClubState | undefined;
  return async (db) => {
    const standing = await latestStanding(db, clubId);
    const isRead = kept !== undefined && !(await touchesRecords(db, clubId, kept.seq));
    const records = isRead ? kept!.records : await read(db);
    kept = { ...standing, records };
    return kept;
  };
}
