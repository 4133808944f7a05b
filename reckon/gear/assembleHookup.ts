import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { PairHookup } from '#core/day/Gear.ts';
import type { Hookup, HungBand, RiggedBand } from '#core/rig/Rig.ts';
import { bandCurvesOf } from './bandCurvesOf.ts';
import { recordById } from './recordById.ts';

export type HookupRecords = Pick<
  ClubRecords,
  'bandPair' | 'bandReading' | 'hookup' | 'anchor' | 'scaleReading'
>;

/** Bar heights closer than this are one height of a scale reading. */
const SAME_HEIGHT_M = 0.005;

/** A band pair in one of a rack's hookups. Two scale readings or more of the pair in that hookup overrule geometry. */
export function assembleHookup(
  records: HookupRecords,
  bandPairId: string,
  hookupId: string,
  on: string,
): PairHookup {
  const hookup = recordById(records, 'hookup', hookupId);
  const anchor = recordById(records, 'anchor', hookup.anchorId);
  const { a, b, bothRead } = bandCurvesOf(records, bandPairId, on);
  const place = { hookup: wayOf(hookup), anchor: { xM: anchor.xM, yM: anchor.yM, zM: anchor.zM } };
  const rigged: RiggedBand[] = bothRead
    ? [
        { curves: a, ...place, count: 1 },
        { curves: b, ...place, count: 1 },
      ]
    : [{ curves: a, ...place, count: 2 }];
  return {
    pairId: bandPairId,
    hookupId,
    anchorId: anchor.id,
    ratedLoadN: anchor.ratedLoadN,
    rigged,
    measured: readOnScale(records.scaleReading, bandPairId, hookupId),
  };
}

/** The choke takes the whole loop, so that nothing is left to stretch: such a hookup cannot be hung. */
export function isUsedUp({ rigged }: PairHookup): boolean {
  return rigged.some(
    ({ hookup, curves }) => hookup.way === 'choked' && hookup.spentM >= curves.loading.restLengthM,
  );
}

function wayOf({ way, spentM }: RecordOf<'hookup'>): Hookup {
  return way === 'choked' ? { way, spentM: spentM ?? 0 } : { way };
}

/** The newest reading at each bar height; null below two heights. */
function readOnScale(
  readings: readonly RecordOf<'scaleReading'>[],
  bandPairId: string,
  hookupId: string,
): HungBand | null {
  const newestFirst = readings
    .filter((reading) => reading.bandPairId === bandPairId && reading.hookupId === hookupId)
    .sort((a, b) => b.takenOn.localeCompare(a.takenOn) || a.barHeightM - b.barHeightM);
  const heights: { zM: number; forceN: number }[] = [];
  for (const { barHeightM, pairForceN } of newestFirst) {
    if (heights.some(({ zM }) => Math.abs(zM - barHeightM) < SAME_HEIGHT_M)) continue;
    heights.push({ zM: barHeightM, forceN: pairForceN });
  }
  return heights.length < 2 ? null : { verticalAt: heights.sort((a, b) => a.zM - b.zM), count: 1 };
}
