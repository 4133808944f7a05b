import { type BuiltBox, nearestBox } from '#contract/day/boxHeights.ts';
import type { OwnBox } from '#contract/season/seasonPlan.ts';
import type { HeightRecords } from '#reckon/lifter/assembleHeights.ts';
import { parallelBoxOf } from '#reckon/lifter/parallelBoxOf.ts';

/** Nobody sits lower (m); only a height that no box of the club gives is held to it. Judgement. */
const LOWEST_M = 0.1;

/** The box of one lifter at each depth that is asked for: the nearest that the club can build. */
export function ownBoxesOf(
  records: HeightRecords,
  built: readonly BuiltBox[],
  lifterId: string,
  depthsM: readonly number[],
  on: string,
): OwnBox[] {
  if (depthsM.length === 0) return [];
  const parallel = parallelBoxOf(records, lifterId, on);
  return depthsM.map((aboveParallelM) => {
    const wantedM = toMillimetre(parallel.heightM + aboveParallelM);
    const heightM = nearestBox(built, wantedM)?.heightM ?? Math.max(LOWEST_M, toCentimetre(wantedM));
    return { aboveParallelM, wantedM, known: parallel.known, heightM };
  });
}

function toMillimetre(heightM: number): number {
  return Math.round(1000 * heightM) / 1000;
}

function toCentimetre(heightM: number): number {
  return Math.round(100 * heightM) / 100;
}
