import { isSameStart } from '#contract/day/isSameStart.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { KnownHow } from '#contract/records/knownHow.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { type EstimatedHeights, estimateHeights, estimateParallelBox } from '#core/lifter/estimateHeights.ts';
import { fullRange, parallelBox } from '#core/lifter/fullRange.ts';
import { type Start as CoreStart, type HeightRange, startHeights } from '#core/lifter/startHeights.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { recordById } from '#reckon/gear/recordById.ts';

/** Where the bar moves for one lifter, and the full range that capability counts from (m above the floor). */
export interface LifterHeights {
  bottomM: number;
  lockoutM: number;
  range: { fromM: number; toM: number };
  /** Where the bar is at the bottom, in front (+) of its place at lockout; null: not measured from this start. */
  bottomForwardM: number | null;
  /** Standard deviations of bottom and lockout; small where measured from this start. */
  bottomSdM: number;
  lockoutSdM: number;
  known: KnownHow;
}

export type HeightRecords = Pick<ClubRecords, 'lifter' | 'liftHeights'>;

/** A lifter of unknown stature is taken to be of this height (m); shown as assumed. */
const ASSUMED_STATURE_M = 1.75;
/** Spread of that stature: men and women together (assumption; adults of one sex differ by some 0.07 m). */
const ASSUMED_STATURE_SD_M = 0.1;
const SAME_START_M = 0.005;
/**
 * A bar is met this far from where it was measured (standard deviation, m), above all seen from the pegs of a band: depth and
 * stance differ from rep to rep, shoes and the place on the back from day to day, and a loop turns round peg and sleeve (assumption).
 */
const MET_SD_M = 0.02;

/**
 * Heights of a lifter in a lift and start on a day: measured from that very start, else from the measured full range,
 * else estimated from stature.
 */
export function assembleHeights(
  records: HeightRecords,
  lifterId: string,
  lift: Lift,
  start: Start,
  on: string,
  benchPadM: number | null = null,
): LifterHeights {
  const { statureM } = recordById(records, 'lifter', lifterId);
  const measured = records.liftHeights.filter(
    (heights) => heights.lifterId === lifterId && heights.lift === lift,
  );
  const stature = statureM ?? ASSUMED_STATURE_M;
  const statureSdM = statureM === null ? ASSUMED_STATURE_SD_M : 0;
  const free = newest(
    measured.filter((heights) => heights.start.way === 'free'),
    on,
  );
  const estimate = (m: number) => estimateHeights(lift, m, benchPadM ?? undefined);
  const other = newest(
    measured.filter((heights) => heights.start.way !== 'free'),
    on,
  );
  const full: HeightRange =
    free ??
    (other === undefined
      ? estimate(stature)
      : fullRange(coreStart(other.start), other, estimate(stature), estimateParallelBox(stature).heightM));
  const fullKnown: KnownHow = free ? 'measured' : statureM === null ? 'assumed' : 'estimated';
  const own = newest(
    measured.filter((heights) => isSameStart(heights.start, start, SAME_START_M)),
    on,
  );
  const atStart = startHeights(full, coreStart(start), parallelBoxM(measured, full, stature, on));
  if (own) {
    const { bottomM, lockoutM, bottomForwardM } = own;
    return { bottomM, lockoutM, bottomForwardM, ...measuredSd, range: atStart.range, known: fullKnown };
  }
  const known = start.way === 'box' && fullKnown === 'measured' ? 'estimated' : fullKnown;
  // Paused, the bar stops where it turns when it is free; on a box a lifter sits back, by how much only a look tells.
  const bottomForwardM = start.way === 'paused' ? (free?.bottomForwardM ?? null) : null;
  const fullSd = free ? measuredSd : estimatedSd(estimate, stature, statureSdM);
  const boxMeasured = measured.some((heights) => heights.start.way === 'box');
  const bottomSdM = bottomSd(start, fullSd.bottomSdM, boxMeasured ? null : boxSd(stature, statureSdM));
  return { ...atStart, bottomForwardM, bottomSdM, lockoutSdM: fullSd.lockoutSdM, known };
}

const measuredSd = { bottomSdM: MET_SD_M, lockoutSdM: MET_SD_M };

/** Of heights estimated from stature, and from one that itself is not known. */
function estimatedSd(
  estimate: (statureM: number) => EstimatedHeights,
  statureM: number,
  statureSdM: number,
): typeof measuredSd {
  const [found, taller] = [estimate(statureM), estimate(statureM + statureSdM)];
  return {
    bottomSdM: Math.hypot(found.bottomSdM, taller.bottomM - found.bottomM, MET_SD_M),
    lockoutSdM: Math.hypot(found.lockoutSdM, taller.lockoutM - found.lockoutM, MET_SD_M),
  };
}

function boxSd(statureM: number, statureSdM: number): number {
  const [found, taller] = [estimateParallelBox(statureM), estimateParallelBox(statureM + statureSdM)];
  return Math.hypot(found.sdM, taller.heightM - found.heightM);
}

/** Pins hold the bar where they are; one measured box fixes the bottom on any other; else a guessed box adds its own. */
function bottomSd({ way }: Start, fullSdM: number, parallelBoxSdM: number | null): number {
  if (way === 'pins') return MET_SD_M;
  if (way !== 'box') return fullSdM;
  return parallelBoxSdM === null ? MET_SD_M : Math.hypot(fullSdM, parallelBoxSdM);
}

function newest(
  heights: readonly RecordOf<'liftHeights'>[],
  on: string,
): RecordOf<'liftHeights'> | undefined {
  const byDate = [...heights].sort((a, b) => a.measuredOn.localeCompare(b.measuredOn));
  return byDate.filter(({ measuredOn }) => measuredOn <= on).at(-1) ?? byDate[0];
}

function coreStart({ way, heightM }: Start): CoreStart {
  if (way === 'free' || way === 'paused') return { way };
  if (heightM === null) throw new CannotAssemble(`The start "${way}" needs its height.`);
  return { way, heightM };
}

/** The box that stops this lifter at the free bottom: from any box measured with them, else from stature. */
function parallelBoxM(
  measured: readonly RecordOf<'liftHeights'>[],
  full: HeightRange,
  statureM: number,
  on: string,
): number {
  const box = newest(
    measured.filter((heights) => heights.start.way === 'box'),
    on,
  );
  return box
    ? parallelBox(box.start.heightM ?? 0, box.bottomM, full.bottomM)
    : estimateParallelBox(statureM).heightM;
}
