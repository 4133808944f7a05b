import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';

/** What was worked out for a training day, and the club it is for. */
export interface SolvedDay {
  plan: DayPlan;
  prescription: SignedPrescription;
  records: ClubRecords;
}
