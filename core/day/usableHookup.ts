import { bandPull } from '#core/rig/bandPull.ts';
import type { BandLimits } from './bandCautions.ts';
import type { PairHookup } from './Gear.ts';
import { gearPulls, type Travel } from './gearPull.ts';

/**
 * Whether a pair may be prescribed in a hookup for lifters with these travels: it pulls for at least one of them, and
 * for none of them it is stretched beyond the safe ratio or pulls harder than its anchor is rated for. The coach may
 * still hang it by hand, and is then warned.
 */
export function isUsable(hookup: PairHookup, travels: readonly Travel[], limits: BandLimits): boolean {
  const gear = { hookups: [hookup], chains: [], barKg: 0, collarsKg: 0, discs: [] };
  const pulls = travels.some((travel) => {
    const [pull] = gearPulls(gear, travel).hookups;
    return Math.max(Math.abs(pull!.bottomN), Math.abs(pull!.lockoutN)) > LEAST_PULL_N;
  });
  return pulls && travels.every((travel) => isSafe(hookup, travel, limits));
}

/** Less than this at either end is not worth hanging a band for (about half a kilogram). */
const LEAST_PULL_N = 5;

function isSafe(
  { rigged, ratedLoadN }: PairHookup,
  { bottomM, lockoutM, path }: Travel,
  { safeStretch }: BandLimits,
): boolean {
  return rigged.every((band) => {
    const pull = bandPull(band, path, bottomM, lockoutM);
    return [bottomM, lockoutM].every(
      (zM) => pull.stretch(zM) <= safeStretch && pull.anchorN(zM) <= (ratedLoadN ?? Number.POSITIVE_INFINITY),
    );
  });
}
