import { createHash } from 'node:crypto';
import { planOf } from '#contract/day/planOf.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import { canonicalJson } from '#reckon/basis/canonicalJson.ts';

/** As many as a coach compares at a glance. */
const characters = 6;

/** The prescription with its plan read and its fingerprint: the head of a SHA-256 (FIPS 180-4) over the plan as it was stored, keys in order. */
export function signPrescription(prescription: Prescription): SignedPrescription {
  const whole = createHash('sha256').update(canonicalJson(prescription.document)).digest('hex');
  return { ...prescription, document: planOf(prescription), fingerprint: whole.slice(0, characters) };
}
