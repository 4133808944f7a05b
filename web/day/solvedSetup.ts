import type { PlanPlace } from '#contract/day/dayPlan.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { mainBlock } from '#contract/paper/lifterLine.ts';
import type { Setup, Start } from '#contract/records/lift.ts';
import type { SceneStrength } from '#web/parts/setupScene.ts';

/** What hangs on a bar, and its mass. */
export type OnBar = Pick<Setup, 'barKg' | 'bands' | 'chains'>;

/** What was worked out to hang on one lifter's bar in the main step; null where nothing was. */
export function solvedSetup(
  prescription: SignedPrescription | null,
  groupId: string,
  lifterId: string,
): OnBar | null {
  const solved = placeOf(prescription, groupId, lifterId)?.solved;
  if (!solved) return null;
  return {
    barKg: mainBlock(solved).barKg,
    bands: solved.set.bands.map(({ bandPairId, hookupId }) => ({ bandPairId, hookupId })),
    chains: solved.set.chains.map(({ chainPairId, pairs }) => ({ chainPairId, pairs })),
  };
}

/**
 * What the plan's figures for one lifter go by, for a picture that says the same; null in older plans, and where the lifter
 * now starts in another way than the plan has it.
 */
export function solvedStrength(
  prescription: SignedPrescription | null,
  groupId: string,
  lifterId: string,
  start: Start,
): SceneStrength | null {
  const place = placeOf(prescription, groupId, lifterId);
  if (!place?.solved?.strength.lifter || place.start.way !== start.way) return null;
  const { lifter, sdLn } = place.solved.strength;
  return { ...lifter, strengthSdLn: sdLn, tiredLn: mainBlock(place.solved).effort?.tiredLn ?? 0 };
}

function placeOf(
  prescription: SignedPrescription | null,
  groupId: string,
  lifterId: string,
): PlanPlace | null {
  const plan = prescription?.document ?? null;
  const group = plan?.groups.find((candidate) => candidate.groupId === groupId);
  return group?.places.find((place) => place.lifterId === lifterId) ?? null;
}
