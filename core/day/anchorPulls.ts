import { bandPull } from '#core/rig/bandPull.ts';
import { hungPull } from '#core/rig/hungPull.ts';
import type { Explanation } from './Explanation.ts';
import type { GearSet, PairHookup, RackGear } from './Gear.ts';
import type { Travel } from './gearPull.ts';

/**
 * The most that each anchor point in use carries on one side (N) over the travel: the tensions of all bands on it.
 * Of the two sides the stronger band counts. Where only scale readings exist, half the pair's vertical pull.
 */
export function anchorPulls(gear: RackGear, set: GearSet, travel: Travel): Explanation['anchors'] {
  const anchors = new Map<string, Explanation['anchors'][number]>();
  for (const index of set.hookups) {
    const hookup = gear.hookups[index]!;
    const { anchorId, ratedLoadN } = hookup;
    const before = anchors.get(anchorId)?.pullN ?? 0;
    anchors.set(anchorId, { anchorId, pullN: before + mostOnOneSideN(hookup, travel), ratedLoadN });
  }
  return [...anchors.values()];
}

/** The most that one anchor point carries for one pair. */
export function mostOnOneSideN(
  { rigged, measured }: PairHookup,
  { bottomM, lockoutM, path }: Travel,
): number {
  const ends = [bottomM, lockoutM];
  const geometry = rigged.map((band) => bandPull(band, path, bottomM, lockoutM));
  const scale = measured === null ? [] : [hungPull(measured, bottomM, lockoutM)];
  return Math.max(
    0,
    ...ends.flatMap((zM) => geometry.map((pull) => pull.anchorN(zM))),
    ...ends.flatMap((zM) => scale.map((pull) => Math.abs(pull.downN(zM)) / 2)),
  );
}
