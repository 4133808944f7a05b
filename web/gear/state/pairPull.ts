import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { AnchorRecord, HookupRecord, Rack } from '#contract/records/gear.ts';
import { loopPerPath, pathLengthM } from '#core/rig/bandPath.ts';
import { bandPull } from '#core/rig/bandPull.ts';
import { hungPull } from '#core/rig/hungPull.ts';
import type { Hookup } from '#core/rig/Rig.ts';
import type { PairState, SideState } from './pairState.ts';

/** A hookup with the rack and the anchor point that it stands on. */
export interface HookupPlace {
  rack: Rack;
  hookup: HookupRecord;
  anchor: AnchorRecord;
}

/** Pull of both bands of a pair at one bar height, straight above the anchors' own line; down is positive. */
export interface PairPull {
  downN: number;
  low95N: number;
  high95N: number;
  /** What it rests on: the scale at this hookup, the loops' readings, beyond their longest, or the width alone. */
  from: 'scale' | 'readings' | 'beyondReadings' | 'width';
  /** What geometry and curves alone say; the same as `downN` unless a scale was read. */
  geometryN: number;
  /** Stretch ratio of the loop that is stretched most. */
  stretch: number;
  /** What the more loaded of the two anchor points carries. */
  anchorN: number;
  foreAftN: number;
}

/** All hookups in use with what they stand on, in the order of racks. */
export function hookupPlaces(records: ClubRecords): HookupPlace[] {
  return records.rack.flatMap((rack) =>
    records.hookup
      .filter(({ rackId }) => rackId === rack.id)
      .flatMap((hookup) => {
        const anchor = records.anchor.find(({ id }) => id === hookup.anchorId);
        return anchor ? [{ rack, hookup, anchor }] : [];
      }),
  );
}

/** What the pair gives in a hookup; null where the choke uses up the whole loop. */
export function pairPull(
  records: Pick<ClubRecords, 'scaleReading'>,
  state: PairState,
  { hookup, anchor }: HookupPlace,
  zM: number,
): PairPull | null {
  const way = wayOf(hookup);
  if (way.way === 'choked' && state.sides.some((side) => way.spentM >= side.restLengthM)) return null;
  const pulls = state.sides.map(({ curves }) =>
    bandPull({ curves, hookup: way, anchor, count: 1 }, [], zM, zM),
  );
  const geometryN = pulls.reduce((sum, pull) => sum + pull.downN(zM), 0);
  const shared = {
    geometryN,
    stretch: Math.max(...pulls.map((pull) => pull.stretch(zM))),
    anchorN: Math.max(...pulls.map((pull) => pull.anchorN(zM))),
    foreAftN: pulls.reduce((sum, pull) => sum + pull.foreAftN(zM), 0),
  };
  const scale = records.scaleReading.filter(
    (reading) => reading.hookupId === hookup.id && reading.bandPairId === state.pair.id,
  );
  if (new Set(scale.map(({ barHeightM }) => barHeightM)).size >= 2) {
    const verticalAt = scale.map(({ barHeightM, pairForceN }) => ({ zM: barHeightM, forceN: pairForceN }));
    const hung = hungPull({ verticalAt, count: 1 }, zM, zM);
    return { ...shared, ...around(hung.downN(zM), hung.downSdN(zM)), from: 'scale' };
  }
  const sdN = Math.hypot(...pulls.map((pull) => pull.downSdN(zM)));
  const from =
    state.measured !== 'both'
      ? 'width'
      : pulls.some((pull) => pull.extrapolated(zM))
        ? 'beyondReadings'
        : 'readings';
  return { ...shared, ...around(geometryN, sdN), from };
}

/** Length (m) to which a hookup stretches this loop, counted as the whole loop end to end, with the bar at a height. */
export function loopLengthM(side: SideState, { hookup, anchor }: HookupPlace, zM: number): number {
  const way = wayOf(hookup);
  if (way.way === 'choked' && way.spentM >= side.restLengthM) return side.restLengthM;
  return loopPerPath(way, side.restLengthM) * pathLengthM(anchor, 0, zM);
}

function wayOf(hookup: HookupRecord): Hookup {
  return hookup.way === 'choked' ? { way: 'choked', spentM: hookup.spentM ?? 0 } : { way: hookup.way };
}

const NORMAL_975 = 1.96;

function around(downN: number, sdN: number): Pick<PairPull, 'downN' | 'low95N' | 'high95N'> {
  const half = NORMAL_975 * sdN;
  const [low95N, high95N] = [downN - half, downN + half];
  // The interval does not cross zero: a band never turns its pull round.
  return downN >= 0
    ? { downN, low95N: Math.max(0, low95N), high95N }
    : { downN, low95N, high95N: Math.min(0, high95N) };
}
