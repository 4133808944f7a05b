import { createHash } from 'node:crypto';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import { canonicalJson } from '#reckon/basis/canonicalJson.ts';

/** As many as a coach compares at a glance. */
const characters = 6;

/** The prescription with its fingerprint: the head of a SHA-256 (FIPS 180-4) over its document as it was stored, keys in order. */
export function signPrescription(prescription: Prescription): SignedPrescription {
  const whole = createHash('sha256').update(canonicalJson(prescription.document)).digest('hex');
  return { ...prescription, fingerprint: whole.slice(0, characters) };
}
