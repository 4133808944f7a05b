import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Long } from '#contract/records/long.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import type { TakenPlan } from '#contract/records/takenPlan.ts';
import type { FormerRecord } from './formerRecord.ts';

/** What an archive holds. */
export interface ArchiveContent {
  records: ClubRecords;
  /** By day and number. */
  prescriptions: Long<Prescription>;
  /** By season and number. */
  takenPlans: Long<TakenPlan>;
  /** The log by day, order and id. */
  sets: Long<LoggedSet>;
  former: readonly FormerRecord[];
}

/** A club with nothing but records. */
export const nothingBeside = { prescriptions: [], takenPlans: [], sets: [], former: [] };
