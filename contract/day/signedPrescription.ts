import { z } from 'zod';
import { prescription } from '#contract/records/prescription.ts';

/**
 * A prescription as it is given out: with six hexadecimal characters that sum its plan up, for whoever holds a sheet of it. Two plans
 * that differ in anything have the same ones once in 17 million.
 */
export const signedPrescription = prescription.extend({ fingerprint: z.string() });

export type SignedPrescription = z.infer<typeof signedPrescription>;
