import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { millraceHistory } from './millraceHistory.ts';

/** The log of the invented club, two years up to yesterday: the same for the same records on every machine. All invented. */
export function millraceLog(records: ClubRecords, today: string): LoggedSet[] {
  return millraceHistory(records, today).sets;
}
