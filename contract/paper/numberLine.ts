import { planOf } from '#contract/day/planOf.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { clockTime } from '#contract/words/dayWords.ts';

/**
 * Which plan this is, alike on screen, paper and terminal: "Number 2 of this day, at 21:58, fingerprint 3fa9c1", and whose bars it has
 * where only what is expected of them was told anew. Two lines beside the foot of a sheet.
 */
export function numberLine(prescription: SignedPrescription, timeZone: string): string {
  const { number, solvedAt, fingerprint } = prescription;
  const retells = planOf(prescription)?.retells ?? null;
  const line = `Number ${number} of this day, at ${clockTime(solvedAt, timeZone)}, fingerprint ${fingerprint}`;
  return retells === null ? line : `${line}, same bars as number ${retells}`;
}
