import type { GroupOfLifter } from '#contract/season/seasonPlan.ts';
import { addedWork, type SessionWork } from '#contract/season/sessionWork.ts';
import { tiringOf } from '#core/effort/Tiring.ts';
import { simulateRep } from '#core/rep/simulateRep.ts';
import { referenceMaximum } from '#reckon/day/referenceMaximum.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import { assembleCapability, type CapabilityRecords } from '#reckon/lifter/assembleCapability.ts';
import { assembleLoad } from '#reckon/lifter/assembleLoad.ts';

/**
 * An estimate of what a group that is not worked out yet comes to for a lifter: its shares of the maximum of today as straight weight of the same mean load,
 * over the lifter's own way, each rep as long as the first. Null where heights, a maximum or the shares are not known.
 */
export function workAhead(
  records: CapabilityRecords,
  lifterId: string,
  { lift, start, blocks, lockoutShare, meanShare, bandShare }: GroupOfLifter,
  on: string,
): SessionWork | null {
  if (lockoutShare === null || meanShare === null) return null;
  const barShare = lockoutShare - (bandShare ?? 0);
  return assembledOrNull(() => {
    const referenceKg = referenceMaximum(records, lifterId, lift, on).kg;
    const { capability } = assembleCapability(records, lifterId, lift, start, on);
    const setup = { rackId: null, start, barKg: 0, bands: [], chains: [] };
    const { load } = assembleLoad(records, { lifterId, lift, setup, on });
    const wayM = load.lockoutM - load.bottomM;
    const { loweringS } = tiringOf(lift);
    return addedWork(
      blocks.map(({ sets, reps, shareOfAim }) => {
        const lifts = sets * reps;
        const liftedKg = barShare * shareOfAim * referenceKg;
        // Bands hang on the lighter steps, too.
        const meanKg = liftedKg + (meanShare - barShare) * referenceKg;
        const { made, durationS } = simulateRep({ ...load, barKg: meanKg }, capability);
        return {
          liftedKg: lifts * liftedKg,
          workJ: lifts * meanKg * load.gravityMps2 * wayM,
          underBarS: made ? lifts * (durationS + loweringS) : null,
        };
      }),
    );
  });
}
