import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { BandLimits } from '#core/day/bandCautions.ts';
import type { PairHookup, RackGear } from '#core/day/Gear.ts';
import type { Travel } from '#core/day/gearPull.ts';
import { hookupReach, isUsable } from '#core/day/hookupReach.ts';
import type { SearchRules } from '#core/day/SearchRules.ts';
import { splitDiscs } from '#core/day/splitDiscs.ts';
import { assembleHookup, isUsedUp } from '#reckon/gear/assembleHookup.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { boundsOf } from './boundsOf.ts';

export interface AssembledRack {
  rack: RecordOf<'rack'>;
  gear: RackGear;
  /** What is loaded there: the bar, and that nothing is counted for collars where none are set. */
  barLabel: string;
  /** No bar is set for the rack: this mass was assumed. */
  barAssumedKg: number | null;
  discs: { massKg: number; faceMassKg: number; pairs: number }[];
}

/** A rack whose bar nobody has set is taken to hold a usual one (kg). */
const USUAL_BAR_KG = 20;

/**
 * Bar, discs, hookups and chains of the racks that a group uses at once. Discs are split between the racks; pairs and
 * chains stay common, since the allocation shares them out.
 */
export function assembleRackGear(
  records: ClubRecords,
  lift: Lift,
  on: string,
  racks: readonly { rackId: string; places: readonly Place[]; travels: readonly Travel[] }[],
): AssembledRack[] {
  const limits = bandLimitsOf(records);
  const shares = splitDiscs(
    records.disc.map((disc) => ({ massKg: trueMassKg(disc), pairs: disc.pairs })),
    racks.length,
  );
  return racks.map(({ rackId, places, travels }, index) => {
    const rack = recordById(records, 'rack', rackId);
    const { bar, barKg, collarsKg } = emptyBarOf(records, rack);
    const discs = shares[index]!;
    return {
      rack,
      gear: {
        barKg,
        collarsKg,
        discs,
        hookups: hookupsAt(records, rack, lift, on, places, travels, limits),
        chains: chainsAt(records, rack, places),
      },
      barLabel: `${bar?.label ?? 'bar not set'}${rack.collarPairId === null ? ', no collars counted' : ''}`,
      barAssumedKg: bar === null ? USUAL_BAR_KG : null,
      discs: discs.map((share, i) => ({ ...share, faceMassKg: records.disc[i]!.faceMassKg })),
    };
  });
}

/** The bar and the collars of a rack; a usual bar where none is set. */
export function emptyBarOf(records: ClubRecords, { barId, collarPairId }: RecordOf<'rack'>) {
  const bar = barId === null ? null : recordById(records, 'bar', barId);
  const collars = collarPairId === null ? null : recordById(records, 'collarPair', collarPairId);
  return { bar, barKg: bar?.massKg ?? USUAL_BAR_KG, collarsKg: collars?.pairMassKg ?? 0 };
}

/** What the club allows of its bands. */
export function bandLimitsOf({ club }: Pick<ClubRecords, 'club'>): BandLimits {
  return { safeStretch: club[0]?.safeStretchRatio ?? 2.5, mismatchShare: club[0]?.pairMismatchShare ?? 0.05 };
}

/** A pair is hung for what it is judged by: where shares and speeds are asked for, at most half of its work lies above them. */
const MOST_LATE_SHARE = 0.5;

/** What proposals of a group keep to: its own bounds or the club's, and the club's limit for its bands. */
export function searchRulesOf(records: Pick<ClubRecords, 'club'>, group: Pick<Group, 'bounds'>): SearchRules {
  const { safeStretch } = bandLimitsOf(records);
  const { leastBarShare, leastBandShare, mostBandShare, mostPairs } = boundsOf(records, group);
  return {
    safeStretch,
    mostLateShare: MOST_LATE_SHARE,
    bounds: { leastBarShare, leastBandShare, mostBandShare, mostPairs },
  };
}

/** The pairs that are not retired yet. */
export function pairsInUse({ bandPair }: Pick<ClubRecords, 'bandPair'>, on: string): RecordOf<'bandPair'>[] {
  return bandPair.filter(({ retiredOn }) => retiredOn === null || retiredOn > on);
}

function trueMassKg({ weighedMassKg, faceMassKg }: RecordOf<'disc'>): number {
  return weighedMassKg ?? faceMassKg;
}

/** Every pair in use in every hookup of the rack for the lift that leaves it a loop to stretch, fit for somebody or not. */
export function waysToHang(
  records: ClubRecords,
  rack: Pick<RecordOf<'rack'>, 'id'>,
  lift: Lift,
  on: string,
): PairHookup[] {
  return records.hookup
    .filter(({ rackId, lifts }) => rackId === rack.id && lifts.includes(lift))
    .flatMap((hookup) =>
      pairsInUse(records, on).map((pair) => assembleHookup(records, pair.id, hookup.id, on)),
    )
    .filter((hung) => !isUsedUp(hung));
}

/** Every pair in use in every hookup of the rack that is fit for somebody there, and whatever the coach hung by hand. */
function hookupsAt(
  records: ClubRecords,
  rack: RecordOf<'rack'>,
  lift: Lift,
  on: string,
  places: readonly Place[],
  travels: readonly Travel[],
  limits: BandLimits,
): PairHookup[] {
  const byHand = places.flatMap((place) => place.byCoach?.bands ?? []);
  const isByHand = (pairId: string, hookupId: string) =>
    byHand.some((band) => band.bandPairId === pairId && band.hookupId === hookupId);
  const isForSomebody = (hung: PairHookup) =>
    travels.some((travel) => isUsable(hookupReach(hung, travel), limits.safeStretch));
  return waysToHang(records, rack, lift, on).filter(
    (hung) => isByHand(hung.pairId, hung.hookupId) || isForSomebody(hung),
  );
}

function chainsAt(
  records: ClubRecords,
  rack: RecordOf<'rack'>,
  places: readonly Place[],
): RackGear['chains'] {
  const byHand = places.flatMap((place) => place.byCoach?.chains ?? []);
  return records.chainPair
    .filter(({ id }) => rack.takesChains || byHand.some(({ chainPairId }) => chainPairId === id))
    .map(({ id, pairs, massPerMetreKg, lengthM, attachBelowBarM }) => ({
      chainPairId: id,
      pairs,
      chain: { massPerMetreKg, lengthM, attachBelowBarM, count: 2 },
    }));
}
