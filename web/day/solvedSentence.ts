import type { SignedPrescription } from '#contract/day/signedPrescription.ts';

/** How good the allocation is, in one plain sentence, from the solver's own proof. */
export function solvedSentence(prescription: SignedPrescription): string {
  const plan = prescription.document;
  if (plan === null) return 'It was written by another version of the program and cannot be read here.';
  const proofs = plan.groups.flatMap(({ proof }) => (proof === null ? [] : [proof]));
  if (proofs.length === 0) return '';
  const open = proofs.filter(({ status }) => status !== 'optimal');
  if (open.length === 0) {
    return 'Proven: no other way of hanging these bands fits the aims better, changes at the rack counted in.';
  }
  const gap = Math.max(...open.map((proof) => proof.gap));
  const leftOut = open.reduce((sum, { setsLeftOut }) => sum + setsLeftOut, 0);
  const why =
    leftOut > 0
      ? 'There is so much gear that not every setup was tried, and this is not proven to be the best'
      : 'Time ran out before this was proven to be the best';
  return `${why}: a better way could come at most ${(100 * gap).toFixed(1)} points closer to the aims, all lifters together.`;
}
