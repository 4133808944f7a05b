import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Prescription } from '#contract/records/prescription.ts';

/** What was worked out for a training day, and the club it is for. */
export interface SolvedDay {
  plan: DayPlan;
  prescription: Prescription;
  records: ClubRecords;
}
