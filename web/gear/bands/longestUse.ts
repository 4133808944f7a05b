import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type HookupPlace, loopLengthM } from '#web/gear/state/pairPull.ts';
import type { SideState } from '#web/gear/state/pairState.ts';

/** The longest that the club would stretch a loop: where, and at which bar height. */
export interface LongestUse {
  lengthM: number;
  barHeightM: number;
  place: HookupPlace;
}

/** Over all hookups and the measured heights of the lifters who may use them; null where no height was measured. */
export function longestUse(
  records: Pick<ClubRecords, 'liftHeights'>,
  places: readonly HookupPlace[],
  side: SideState,
): LongestUse | null {
  let longest: LongestUse | null = null;
  for (const place of places) {
    for (const { lift, bottomM, lockoutM } of records.liftHeights) {
      if (!place.hookup.lifts.includes(lift)) continue;
      for (const barHeightM of [bottomM, lockoutM]) {
        const lengthM = loopLengthM(side.restLengthM, place, barHeightM);
        if (longest === null || lengthM > longest.lengthM) longest = { lengthM, barHeightM, place };
      }
    }
  }
  return longest;
}
