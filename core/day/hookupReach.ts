import { compileLoad } from '#core/load/compileLoad.ts';
import { onceFor } from '#core/numeric/onceFor.ts';
import type { Newton } from '#core/numeric/quantity.ts';
import { bandPull } from '#core/rig/bandPull.ts';
import { mostOnOneSideN } from './anchorPulls.ts';
import type { PairHookup } from './Gear.ts';
import { pairOnBar, type Travel } from './gearPull.ts';

/** What a pair in a hookup does to one lifter, its band and its anchor; forces in N. */
export interface HookupReach {
  /** Vertical pull of the pair, down positive. */
  bottomN: Newton;
  lockoutN: Newton;
  /** The largest stretch ratio of its loops. */
  stretch: number;
  /** The most that one anchor point carries for it. */
  anchorN: Newton;
  ratedLoadN: Newton;
}

/** A day asks it of the same lifter and hookup up to five times. */
export const hookupReach = onceFor((hookup: PairHookup, travel: Travel): HookupReach => {
  const { bottomM, lockoutM, path } = travel;
  const { bandN } = compileLoad({ ...travel, barKg: 0, chains: [], ...pairOnBar(hookup) });
  const loops = hookup.rigged.map((band) => bandPull(band, path, bottomM, lockoutM));
  return {
    bottomN: bandN(bottomM),
    lockoutN: bandN(lockoutM),
    stretch: Math.max(1, ...loops.flatMap((loop) => [loop.stretch(bottomM), loop.stretch(lockoutM)])),
    anchorN: mostOnOneSideN(hookup, travel),
    ratedLoadN: hookup.ratedLoadN ?? Number.POSITIVE_INFINITY,
  };
});

/** Less than this at either end is not worth hanging a band for (N; about half a kilogram). */
const LEAST_PULL_N = 5;

/** Whether the pair may be proposed at all: it pulls, no loop is stretched too far, and its anchor holds it. */
export function isUsable(reach: HookupReach, safeStretch: number): boolean {
  const pulls = Math.max(Math.abs(reach.bottomN), Math.abs(reach.lockoutN)) > LEAST_PULL_N;
  return pulls && reach.stretch <= safeStretch && reach.anchorN <= reach.ratedLoadN;
}
