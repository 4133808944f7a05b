import type { Reference } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { referenceMaximum } from '#reckon/day/referenceMaximum.ts';
import { type AssembledCapability, assembleCapability } from '#reckon/lifter/assembleCapability.ts';
import { estimatedCapability } from '#reckon/strength/estimatedCapability.ts';
import type { Trial } from './Trial.ts';

/** What the lifter can do in this lift and way of starting, and the maximum that percentages refer to. */
export interface TrialStrength extends AssembledCapability {
  reference: Reference;
}

/** What is kept is kept with the club's state or the estimate that it rests on. */
const kept = new WeakMap<ClubRecords | StrengthEstimate, Map<string, TrialStrength>>();

/**
 * A lifter's strength by the whole log where it has an estimate, else by a best. Worked out once for each state of the
 * club: it takes as long as many reps, and neither bar nor bands change it. The range is that of the first start asked
 * for; a trial sets its own.
 */
export function trialStrength(
  club: ClubRecords,
  { lifterId, lift, start }: Pick<Trial, 'lifterId' | 'lift' | 'start'>,
  today: string,
  estimates: readonly StrengthEstimate[],
): TrialStrength {
  const estimate = estimates.find((one) => one.lifterId === lifterId && one.lift === lift) ?? null;
  const rests = estimate ?? club;
  const known = kept.get(rests) ?? new Map<string, TrialStrength>();
  kept.set(rests, known);
  const key = `${lifterId} ${lift} ${start.way} ${today}`;
  const before = known.get(key);
  if (before) return before;
  const strength = {
    ...(estimate
      ? estimatedCapability(club, estimate, start, null)
      : assembleCapability(club, lifterId, lift, start, today)),
    reference: referenceMaximum(club, lifterId, lift, today),
  };
  known.set(key, strength);
  return strength;
}
