import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { AnchorRecord, HookupRecord, Rack } from '#contract/records/gear.ts';
import type { PairHookup } from '#core/day/Gear.ts';
import { NORMAL_95 } from '#core/numeric/normal.ts';
import { loopPerPath, pathLengthM } from '#core/rig/bandPath.ts';
import { bandPull } from '#core/rig/bandPull.ts';
import { hungPull } from '#core/rig/hungPull.ts';
import { assembleHookup, isUsedUp } from '#reckon/gear/assembleHookup.ts';
import type { PairState } from './pairState.ts';

/** A hookup with the rack and the anchor point that it stands on. */
export interface HookupPlace {
  rack: Rack;
  hookup: HookupRecord;
  anchor: AnchorRecord;
}

/** Pull of both bands of a pair at one bar height, the bar straight above its start; down is positive. */
export interface PairPull {
  downN: number;
  low95N: number;
  high95N: number;
  /** What it rests on: the scale at this hookup, both loops' readings, one loop's, beyond the longest, or the width alone. */
  from: 'scale' | 'readings' | 'oneBand' | 'beyondReadings' | 'width';
  /** What geometry and curves alone say; the same as `downN` unless a scale was read. */
  geometryN: number;
  /** Stretch ratio of the loop that is stretched most. */
  stretch: number;
  /** What the more loaded of the two anchor points carries. */
  anchorN: number;
  /** + pulls the lifter forward. */
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

/** Why there is no pull to show, in a few words. */
export interface NoPull {
  not: string;
}

/** What the pair gives in a hookup, or why that cannot be told. */
export function pairPull(
  { records, today }: { records: ClubRecords; today: string },
  { pair, sides }: PairState,
  { hookup }: HookupPlace,
  zM: number,
): PairPull | NoPull {
  if (sides.some(({ fault }) => fault !== null)) return { not: 'a reading is impossible' };
  const hung = assembleHookup(records, pair.id, hookup.id, today);
  if (isUsedUp(hung)) return { not: 'the choke uses up the loop' };
  const { rigged, measured } = hung;
  const pulls = rigged.map((band) => bandPull(band, [], zM, zM));
  const geometryN = sum(pulls.map((pull) => pull.downN(zM)));
  const shared = {
    geometryN,
    stretch: Math.max(...pulls.map((pull) => pull.stretch(zM))),
    anchorN: Math.max(...pulls.map((pull) => pull.anchorN(zM))),
    foreAftN: sum(pulls.map((pull) => pull.foreAftN(zM))),
  };
  if (measured !== null) {
    const onScale = hungPull(measured, zM, zM);
    return { ...shared, ...around(onScale.downN(zM), onScale.downSdN(zM)), from: 'scale' };
  }
  const sdN = Math.hypot(...pulls.map((pull) => pull.downSdN(zM)));
  const beyond = pulls.some((pull) => pull.extrapolated(zM));
  return { ...shared, ...around(geometryN, sdN), from: restsOn(rigged, beyond) };
}

/** Length (m) to which a hookup stretches a loop, counted as the whole loop end to end, with the bar at a height. */
export function loopLengthM(restLengthM: number, { hookup, anchor }: HookupPlace, zM: number): number {
  const spentM = hookup.spentM ?? 0;
  if (hookup.way === 'choked' && spentM >= restLengthM) return restLengthM;
  const way = hookup.way === 'choked' ? { way: hookup.way, spentM } : { way: hookup.way };
  return loopPerPath(way, restLengthM) * pathLengthM(anchor, 0, zM);
}

type Rigged = PairHookup['rigged'];

function restsOn(rigged: Rigged, beyond: boolean): PairPull['from'] {
  if (rigged.some(({ curves }) => curves.loading.known === 'notMeasured')) return 'width';
  if (beyond) return 'beyondReadings';
  return rigged.length === 1 ? 'oneBand' : 'readings';
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function around(downN: number, sdN: number): Pick<PairPull, 'downN' | 'low95N' | 'high95N'> {
  const half = NORMAL_95 * sdN;
  const [low95N, high95N] = [downN - half, downN + half];
  // The interval does not cross zero: a band never turns its pull round.
  return downN >= 0
    ? { downN, low95N: Math.max(0, low95N), high95N }
    : { downN, low95N, high95N: Math.min(0, high95N) };
}
