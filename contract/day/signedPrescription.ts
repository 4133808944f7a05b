import { z } from 'zod';
import { prescription } from '#contract/records/prescription.ts';
import { dayPlan } from './dayPlan.ts';

/** A prescription as it is given out: its plan is read already, so that no screen has to. */
export const signedPrescription = prescription.extend({
  /** Null where an older program wrote a plan that this one cannot read. */
  document: dayPlan.nullable(),
  /**
   * Six hexadecimal characters that sum up the plan as it was stored, for whoever holds a sheet of it. Two plans that differ in anything
   * have the same ones once in 17 million.
   */
  fingerprint: z.string(),
});

export type SignedPrescription = z.infer<typeof signedPrescription>;

/** The last one of a day, beside the club as it is. */
export const standingPrescription = signedPrescription.extend({
  /** The mark of what the day's loads rest on as the club is now: a plan that bears another one no longer stands. */
  basisNow: z.string(),
});

export type StandingPrescription = z.infer<typeof standingPrescription>;
