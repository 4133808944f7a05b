import type { Reference } from '#contract/day/dayPlan.ts';
import type { Lift } from '#contract/records/lift.ts';
import { maxBar } from '#core/rep/maxBar.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import {
  assembleCapability,
  bestToGoBy,
  type CapabilityRecords,
  isStraight,
} from '#reckon/lifter/assembleCapability.ts';
import { assembleLoad } from '#reckon/lifter/assembleLoad.ts';

/**
 * The maximum that percentages refer to: the lifter's best with straight weight from a free start in their equipment
 * where there is one, else what the model gives for a straight bar.
 */
export function referenceMaximum(
  records: CapabilityRecords,
  lifterId: string,
  lift: Lift,
  on: string,
): Reference {
  const { equipment, name } = recordById(records, 'lifter', lifterId);
  const best = bestToGoBy(records, lifterId, lift, on);
  if (best && isStraight(best) && best.equipment === equipment) {
    return { kg: best.setup.barKg, from: 'best', loweredFromKg: null, doneOn: best.doneOn, equipment };
  }
  const start = { way: 'free' as const, heightM: null };
  const setup = { rackId: null, start, barKg: 0, bands: [], chains: [] };
  const { capability } = assembleCapability(records, lifterId, lift, start, on);
  const max = maxBar(assembleLoad(records, { lifterId, lift, setup, on }).load, capability);
  if (max === null)
    throw new CannotAssemble(`The best of ${name} is too light to work out a ${lift} maximum from it.`);
  return {
    kg: max.barKg,
    from: 'model',
    loweredFromKg: null,
    doneOn: best?.doneOn ?? null,
    equipment: best?.equipment ?? equipment,
  };
}
