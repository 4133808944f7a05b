import { type AssembledCapability, assembleCapability } from '#contract/assemble/assembleCapability.ts';
import { referenceMaximum } from '#contract/assemble/referenceMaximum.ts';
import type { Reference } from '#contract/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Trial } from './Trial.ts';

/** What the lifter can do in this lift and way of starting, and the maximum that percentages refer to. */
export interface TrialStrength extends AssembledCapability {
  reference: Reference;
}

const kept = new WeakMap<ClubRecords, Map<string, TrialStrength>>();

/**
 * A lifter's strength, worked out once for each state of the club: it takes as long as many reps, and neither bar nor
 * bands change it. The range is that of the first start asked for; a trial sets its own.
 */
export function trialStrength(
  club: ClubRecords,
  { lifterId, lift, start }: Pick<Trial, 'lifterId' | 'lift' | 'start'>,
  today: string,
): TrialStrength {
  const known = kept.get(club) ?? new Map<string, TrialStrength>();
  kept.set(club, known);
  const key = `${lifterId} ${lift} ${start.way} ${today}`;
  const before = known.get(key);
  if (before) return before;
  const strength = {
    ...assembleCapability(club, lifterId, lift, start, today),
    reference: referenceMaximum(club, lifterId, lift, today),
  };
  known.set(key, strength);
  return strength;
}
