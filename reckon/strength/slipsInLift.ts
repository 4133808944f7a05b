import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { liftModelOf } from '#core/strength/estimateStrength.ts';
import { modelsOf } from '#core/strength/modelsOf.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { type UnitSlip, unitSlips } from '#core/strength/unitSlips.ts';
import type { CapabilityRecords } from '#reckon/lifter/assembleCapability.ts';
import type { LiftOnDay } from './estimateLift.ts';
import { evidenceOf } from './evidenceOf.ts';
import { competitionSetup, riggingOf } from './riggingOf.ts';

/** Sets of one lift of one lifter, by id, that look as if their bars had been written down in another unit. */
export interface SlipInLift {
  looksLike: UnitSlip['looksLike'];
  ids: string[];
}

/** Looks for slips of unit as the estimate does, by what most lifters do and without estimating strength: in hundredths of a second. */
export function slipsInLift(
  records: CapabilityRecords,
  log: readonly LoggedSet[],
  { lifterId, lift, on }: LiftOnDay,
): SlipInLift[] {
  const { sets, ids } = evidenceOf(records, log, lifterId, lift, on);
  if (sets.length === 0) return [];
  const reference = riggingOf(records, lifterId, lift, competitionSetup(lift), on);
  const model = liftModelOf(lift, reference, 'usual');
  const found = unitSlips(sets, modelsOf(sets, model).models, model, populationPrior(lift));
  return found.map((slip) => ({ looksLike: slip.looksLike, ids: slip.sets.map((i) => ids[i]!) }));
}
