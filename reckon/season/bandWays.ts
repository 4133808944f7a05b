import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { anchorsHold, bandShare } from '#core/day/allowedSets.ts';
import { enumerateSetups } from '#core/day/enumerateSetups.ts';
import { hookupReach, isUsable } from '#core/day/hookupReach.ts';
import { bandLimitsOf, pairsInUse, waysToHang } from '#reckon/day/assembleRackGear.ts';
import { boundsOf } from '#reckon/day/boundsOf.ts';
import { referenceMaximum } from '#reckon/day/referenceMaximum.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import { assembleLoad } from '#reckon/lifter/assembleLoad.ts';

/** Pairs that one lifter can hang at one rack, as bits in the order of the pairs in use, and what they come to at lockout, of the reference maximum. */
export interface BandWay {
  pairs: bigint;
  share: number;
}

/** By rack, in the order of `racksFor`. */
export type LifterWays = readonly (readonly BandWay[])[];

/** Racks where a lift can be done. */
function racksFor(records: Pick<ClubRecords, 'rack'>, lift: Lift) {
  return records.rack.filter(({ lifts }) => lifts.includes(lift));
}

/**
 * What the bands in use come to for a lifter in a start, at each rack for the lift: every set of pairs, up to the club's most, that stretches safely and
 * that the anchors hold; none hung is one too. Null where heights or a maximum are not known well enough to say. Each answer is worked out once.
 */
export function bandWays(records: ClubRecords) {
  const known = new Map<string, LifterWays | null>();
  return (lifterId: string, lift: Lift, start: Start, on: string): LifterWays | null => {
    const inUse = pairsInUse(records, on).map(({ id }) => id);
    const key = JSON.stringify([lifterId, lift, start, inUse]);
    if (!known.has(key)) known.set(key, waysOf(records, lifterId, lift, start, on, inUse));
    return known.get(key)!;
  };
}

function waysOf(
  records: ClubRecords,
  lifterId: string,
  lift: Lift,
  start: Start,
  on: string,
  inUse: readonly string[],
): LifterWays | null {
  return assembledOrNull(() => {
    const referenceKg = referenceMaximum(records, lifterId, lift, on).kg;
    return racksFor(records, lift).map((rack) => {
      const setup = { rackId: rack.id, start, barKg: 0, bands: [], chains: [] };
      const { load: travel } = assembleLoad(records, { lifterId, lift, setup, on });
      return waysAt(records, waysToHang(records, rack, lift, on), travel, referenceKg, inUse);
    });
  });
}

function waysAt(
  records: ClubRecords,
  hookups: ReturnType<typeof waysToHang>,
  travel: ReturnType<typeof assembleLoad>['load'],
  referenceKg: number,
  inUse: readonly string[],
): BandWay[] {
  const { safeStretch } = bandLimitsOf(records);
  const reaches = hookups.map((hookup) => hookupReach(hookup, travel));
  const usable = reaches.flatMap((reach, at) => (isUsable(reach, safeStretch) ? [at] : []));
  const bitOf = hookups.map(({ pairId }) => 1n << BigInt(inUse.indexOf(pairId)));
  const { mostPairs } = boundsOf(records, { bounds: null });
  return enumerateSetups({ hookups, chains: [] }, usable, mostPairs)
    .filter((set) => anchorsHold({ hookups }, set, reaches))
    .map((set) => ({
      pairs: set.hookups.reduce((all, at) => all | bitOf[at]!, 0n),
      share: bandShare(set, reaches, { travel, referenceKg }),
    }));
}
