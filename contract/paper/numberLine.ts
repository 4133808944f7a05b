import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { clockTime } from '#contract/words/dayWords.ts';

/**
 * Which plan this is, alike on screen, paper and terminal: "Number 2 of this day, at 21:58, fingerprint 3fa9c1", and whose bars it has
 * where only what is said of them was told anew. `timeZone` is for a plan of before it was kept. Two lines beside the foot of a sheet.
 */
export function numberLine(prescription: SignedPrescription, timeZone: string): string {
  const { number, solvedAt, fingerprint, document: plan } = prescription;
  const retells = plan?.retells ?? null;
  const madeAt = clockTime(solvedAt, plan?.words?.timeZone ?? timeZone);
  const line = `Number ${number} of this day, at ${madeAt}, fingerprint ${fingerprint}`;
  return retells === null ? line : `${line}, same bars as number ${retells}`;
}
