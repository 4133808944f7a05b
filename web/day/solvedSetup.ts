import type { Setup } from '#contract/records/lift.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import { mainBlock } from '#web/print/lifterLine.ts';
import { planOf } from '#web/print/planOf.ts';

/** What hangs on a bar, and its mass. */
export type OnBar = Pick<Setup, 'barKg' | 'bands' | 'chains'>;

/** What was worked out to hang on one lifter's bar in the main step; null where nothing was. */
export function solvedSetup(
  prescription: Prescription | null,
  groupId: string,
  lifterId: string,
): OnBar | null {
  const plan = prescription === null ? null : planOf(prescription);
  const group = plan?.groups.find((candidate) => candidate.groupId === groupId);
  const solved = group?.places.find((place) => place.lifterId === lifterId)?.solved;
  if (!solved) return null;
  return {
    barKg: mainBlock(solved).barKg,
    bands: solved.set.bands.map(({ bandPairId, hookupId }) => ({ bandPairId, hookupId })),
    chains: solved.set.chains.map(({ chainPairId, pairs }) => ({ chainPairId, pairs })),
  };
}
