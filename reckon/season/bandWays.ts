import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { anchorsHold, bandShare } from '#core/day/allowedSets.ts';
import { enumerateSetups } from '#core/day/enumerateSetups.ts';
import type { PairHookup } from '#core/day/Gear.ts';
import { hookupReach, isUsable } from '#core/day/hookupReach.ts';
import { leastSets } from '#core/season/leastSets.ts';
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

/** By rack, in the order of the records, those where the lift can be done. */
export interface LifterWays {
  byRack: readonly (readonly BandWay[])[];
  /** The least sets of pairs at each rack that come to about this share; both are worked out once for each share, since a wave asks for few. */
  near(bandShare: number): bigint[][];
  /** The share nearest to this one that any of them comes to. */
  nearest(bandShare: number): number;
}

/** A share of bands is reached within so much of the maximum: less than half a step from wave to wave. Judgement. */
const REACHED_WITHIN = 0.025;

/**
 * What the bands in use come to for a lifter in a start, at each rack for the lift: every set of pairs, up to the club's most, that stretches safely and
 * that the anchors hold; none hung is one too. Null where heights or a maximum are not known well enough to say. Each answer is worked out once.
 */
export function bandWays(records: ClubRecords) {
  const known = new Map<string, LifterWays | null>();
  const racks = new Map<string, RackHung[]>();
  return (lifterId: string, lift: Lift, start: Start, on: string): LifterWays | null => {
    const inUse = pairsInUse(records, on).map(({ id }) => id);
    return kept(known, [lifterId, lift, start, inUse], () =>
      assembledOrNull(() => {
        const hung = kept(racks, [lift, inUse], () => racksHung(records, lift, on, inUse));
        return waysOf(records, lifterId, lift, start, on, hung);
      }),
    );
  };
}

function kept<Made>(known: Map<string, Made>, of: unknown[], make: () => Made): Made {
  const key = JSON.stringify(of);
  if (!known.has(key)) known.set(key, make());
  return known.get(key)!;
}

/** A rack where a lift can be done, and all that can hang there for it, each with the bit of its pair. */
interface RackHung {
  rackId: string;
  hookups: PairHookup[];
  bitOf: bigint[];
}

function racksHung(records: ClubRecords, lift: Lift, on: string, inUse: readonly string[]): RackHung[] {
  return records.rack
    .filter(({ lifts }) => lifts.includes(lift))
    .map((rack) => {
      const hookups = waysToHang(records, rack, lift, on);
      return {
        rackId: rack.id,
        hookups,
        bitOf: hookups.map(({ pairId }) => 1n << BigInt(inUse.indexOf(pairId))),
      };
    });
}

function waysOf(
  records: ClubRecords,
  lifterId: string,
  lift: Lift,
  start: Start,
  on: string,
  racks: readonly RackHung[],
): LifterWays {
  const referenceKg = referenceMaximum(records, lifterId, lift, on).kg;
  const byRack = racks.map((rack) => {
    const setup = { rackId: rack.rackId, start, barKg: 0, bands: [], chains: [] };
    const { load: travel } = assembleLoad(records, { lifterId, lift, setup, on });
    return waysAt(records, rack, travel, referenceKg);
  });
  const near = new Map<string, bigint[][]>();
  const nearest = new Map<string, number>();
  return {
    byRack,
    near: (share) => kept(near, [share], () => byRack.map(setsNear(share))),
    nearest: (share) => kept(nearest, [share], () => nearestShare(byRack, share)),
  };
}

function setsNear(bandShare: number) {
  return (ways: readonly BandWay[]) =>
    leastSets(
      ways.flatMap(({ pairs, share }) => (Math.abs(share - bandShare) <= REACHED_WITHIN ? [pairs] : [])),
    );
}

function waysAt(
  records: ClubRecords,
  { hookups, bitOf }: RackHung,
  travel: ReturnType<typeof assembleLoad>['load'],
  referenceKg: number,
): BandWay[] {
  const { safeStretch } = bandLimitsOf(records);
  const reaches = hookups.map((hookup) => hookupReach(hookup, travel));
  const usable = reaches.flatMap((reach, at) => (isUsable(reach, safeStretch) ? [at] : []));
  const { mostPairs } = boundsOf(records, { bounds: null });
  return enumerateSetups({ hookups, chains: [] }, usable, mostPairs)
    .filter((set) => anchorsHold({ hookups }, set, reaches))
    .map((set) => ({
      pairs: set.hookups.reduce((all, at) => all | bitOf[at]!, 0n),
      share: bandShare(set, reaches, { travel, referenceKg }),
    }));
}

function nearestShare(byRack: LifterWays['byRack'], wanted: number): number {
  let nearest = 0;
  for (const ways of byRack)
    for (const { share } of ways) if (Math.abs(share - wanted) < Math.abs(nearest - wanted)) nearest = share;
  return nearest;
}
