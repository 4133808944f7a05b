import { heldForceN } from '#core/rep/strengthCurve.ts';
import { bandShare } from './allowedSets.ts';
import { boundsFor } from './boundsFor.ts';
import type { RackGear } from './Gear.ts';
import { heightAt, rangeThatMatters } from './gearPull.ts';
import { hookupReach, isUsable } from './hookupReach.ts';
import { lateBands } from './lateBands.ts';
import type { LifterTask } from './misfit.ts';
import type { SearchRules } from './SearchRules.ts';
import type { SetupRanking } from './SetupRanking.ts';

/** Why a bar stays without bands where the rack has some; masses in kg, as pulled at lockout. */
export type WhyNoBands =
  /** The rack has no hookup for the lift in which a pair of the club could hang. */
  | { reason: 'noWay' }
  /**
   * Every pair is slack all the way, overstretched, more than its anchor is rated for, or does most of its work where the aim
   * does not look; plans kept from before the last was counted have none.
   */
  | {
      reason: 'noneFits';
      slack: number;
      stretched: number;
      tooMuchForAnchor: number;
      late?: number | undefined;
    }
  /** The lightest pair that fits pulls more than the aim and the bounds leave room for. */
  | { reason: 'tooStrong'; lightestKg: number; roomKg: number; pairId: string }
  /** All pairs that fit stay together below what is to hang at least. */
  | { reason: 'tooWeak'; strongestKg: number; leastKg: number }
  /** Bands would serve this lifter alone: what others need of the stock, or few changes at the rack, decided. */
  | { reason: 'shared' };

/** Where the aim leaves less room than this share of the maximum, nobody misses bands (assumption). */
const LEAST_MISSED = 0.05;

/**
 * Null where a bar alone meets the aim as well as any band would. `gear` may hold hookups that nobody could use; `ranked`: all
 * sets that this lifter could have, the bar fixed where the coach did so.
 */
export function whyNoBands(
  task: LifterTask,
  gear: RackGear,
  rules: SearchRules,
  barKg: number,
  ranked: SetupRanking,
): WhyNoBands | null {
  const reaches = gear.hookups.map((hookup) => hookupReach(hookup, task.travel));
  const wantedKg = wantedAtLockoutKg(task, barKg);
  if (wantedKg !== null && wantedKg < LEAST_MISSED * task.referenceKg) return null;
  if (reaches.length === 0) return wantedKg === null ? null : { reason: 'noWay' };
  const usable = reaches.flatMap((reach, index) => (isUsable(reach, rules.safeStretch) ? [index] : []));
  const kg = (index: number) =>
    bandShare({ hookups: [index], chainPairs: [] }, reaches, task) * task.referenceKg;
  const isLate = lateBands(gear, task, rules);
  if (usable.every((index) => isLate({ hookups: [index] }))) {
    const stretched = reaches.filter(({ stretch }) => stretch > rules.safeStretch).length;
    const tooMuchForAnchor = reaches.filter(
      ({ stretch, anchorN, ratedLoadN }) => stretch <= rules.safeStretch && anchorN > ratedLoadN,
    ).length;
    return {
      reason: 'noneFits',
      slack: reaches.length - stretched - tooMuchForAnchor - usable.length,
      stretched,
      tooMuchForAnchor,
      ...(usable.length > 0 && { late: usable.length }),
    };
  }
  const { leastBandShare, mostBandShare, mostPairs } = boundsFor(task.aim, rules.bounds);
  const roomKg = Math.min(wantedKg ?? Number.POSITIVE_INFINITY, mostBandShare * task.referenceKg);
  const lightest = usable.reduce((a, b) => (kg(b) < kg(a) ? b : a));
  if (roomKg > 0 && kg(lightest) > roomKg)
    return { reason: 'tooStrong', lightestKg: kg(lightest), roomKg, pairId: gear.hookups[lightest]!.pairId };
  const leastKg = leastBandShare * task.referenceKg;
  const strongest = new Map<string, number>();
  for (const index of usable) {
    const { pairId } = gear.hookups[index]!;
    strongest.set(pairId, Math.max(strongest.get(pairId) ?? 0, kg(index)));
  }
  const together = [...strongest.values()].sort((a, b) => b - a).slice(0, mostPairs);
  const strongestKg = together.reduce((sum, pair) => sum + pair, 0);
  if (strongestKg < leastKg) return { reason: 'tooWeak', strongestKg, leastKg };
  const alone = ranked.fromBest()();
  return alone !== null && ranked.sets[alone.index]!.hookups.length > 0 ? { reason: 'shared' } : null;
}

/** What the aim leaves for bands beside this bar where the load is highest; null where it says nothing of it. */
function wantedAtLockoutKg(
  { aim, capability, travel, referenceKg }: LifterTask,
  barKg: number,
): number | null {
  if (aim.by === 'percent') {
    const lockout = aim.targets.find(({ basis }) => basis === 'lockout');
    return lockout === undefined ? null : lockout.share * referenceKg - barKg;
  }
  if (aim.by === 'speed') return null;
  const s = rangeThatMatters.at(-1)!;
  const share = aim.bottomShare + (aim.lockoutShare - aim.bottomShare) * s;
  const heldKg = heldForceN(capability, heightAt(travel, s)) / travel.gravityMps2 - capability.movedBodyKg;
  return share * heldKg - barKg;
}
