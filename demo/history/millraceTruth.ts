import type { ClubRecords } from '#contract/records/allKinds.ts';
import { millraceHistory, type TrueStrength } from './millraceHistory.ts';

/** How strong the invented lifters truly were on each day of the log: what an estimate on it should find. */
export function millraceTruth(records: ClubRecords, today: string): TrueStrength[] {
  return millraceHistory(records, today).truth;
}
