import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { millraceHistory } from './millraceHistory.ts';

/** The invented club's log, two years up to yesterday, all invented: the same for the same records on every machine. */
export function millraceLog(records: ClubRecords, today: string): LoggedSet[] {
  return millraceHistory(records, today).sets;
}
