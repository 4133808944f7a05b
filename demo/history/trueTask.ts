import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { BandOnBar, Equipment, Lift, Setup } from '#contract/records/lift.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { assembleHeights } from '#reckon/lifter/assembleHeights.ts';
import { inventedPairN } from '../millraceBands.ts';
import { strengthAt } from './heightStrength.ts';
import type { TrueLift } from './TrueLifter.ts';

/**
 * What a setup asks of an invented lifter. A lift is made when a softened worst height can be held:
 *
 *   asked = (mean over heights of ((bar + body + extra(z)) / c(z))^p)^(1/p),   p = 8
 *
 * in kg of straight total mass (bar and moved body) from the competition start, raw. No motion is worked out: that is
 * what the estimate does, and this history is to be something else. Bands pull as the invented rubber does, not as any
 * curve fitted to it.
 */
export interface TrueTask {
  /** Strength at each height over that of the straight lift. */
  strengths: number[];
  /** What bands and chains add at each height (kg). */
  extrasKg: number[];
  /** Where the bar is hardest to hold, on the lifter's full range from 0 to 1. */
  hardestS: number;
}

/** A setup for one lifter; what is on the bar is told apart. */
export interface TaskSetup {
  lift: Lift;
  equipment: Equipment;
  setup: Omit<Setup, 'barKg'>;
}

const HEIGHTS = 15;
const NEAR_KG = 0.01;
const G = 9.81;
/** The loop's turn round peg and sleeve takes this off what geometry gives; see millraceRacks.ts. */
const TURN_SHARE = 0.975;

export function trueTask(
  records: ClubRecords,
  lifterId: string,
  shape: TrueLift,
  task: TaskSetup,
  today: string,
): TrueTask {
  const straight = {
    ...task,
    equipment: 'raw' as const,
    setup: { ...task.setup, start: competitionStart(task.lift), bands: [], chains: [] },
  };
  const reference = strengthsOf(records, lifterId, shape, straight, today);
  const unit = powerMean(reference.strengths.map((strength) => 1 / strength));
  const { heightsM, strengths, range } = strengthsOf(records, lifterId, shape, task, today);
  const extrasKg = heightsM.map((zM) => hungKg(records, task.setup, zM));
  const effort = strengths.map((strength, i) => (SOME_KG + extrasKg[i]!) / strength);
  const hardest = effort.indexOf(Math.max(...effort));
  return {
    strengths: strengths.map((strength) => strength * unit),
    extrasKg,
    hardestS: (heightsM[hardest]! - range.fromM) / (range.toM - range.fromM),
  };
}

/** The straight total mass that is as hard as this total mass in the task. */
export function askedKg({ strengths, extrasKg }: TrueTask, totalKg: number): number {
  return powerMean(strengths.map((strength, i) => Math.max(0, totalKg + extrasKg[i]!) / strength));
}

/** The total mass in the task that is as hard as a straight one: found by halving. */
export function totalFor(task: TrueTask, straightKg: number): number {
  let [low, high] = [0, 3 * straightKg + 200];
  while (high - low > NEAR_KG) {
    const middle = (low + high) / 2;
    if (askedKg(task, middle) > straightKg) high = middle;
    else low = middle;
  }
  return low;
}

export function competitionStart(lift: Lift): Setup['start'] {
  return { way: lift === 'bench' ? 'paused' : 'free', heightM: null };
}

/** A bar of usual mass, to see where a task is hardest. */
const SOME_KG = 150;

function strengthsOf(
  records: ClubRecords,
  lifterId: string,
  shape: TrueLift,
  { lift, equipment, setup }: TaskSetup,
  today: string,
) {
  const { bottomM, lockoutM, range } = assembleHeights(records, lifterId, lift, setup.start, today);
  const heightsM = Array.from({ length: HEIGHTS }, (_, i) => bottomM + ((lockoutM - bottomM) * i) / HEIGHTS);
  const at = { way: setup.start.way, bottomXM: bottomM - range.fromM, equipment };
  return {
    heightsM,
    range,
    strengths: heightsM.map((zM) => strengthAt(shape.byHeight, at, zM - range.fromM)),
  };
}

function hungKg(records: ClubRecords, { bands, chains }: Omit<Setup, 'barKg'>, zM: number): number {
  let kg = 0;
  for (const band of bands) kg += pairKg(records, band, zM);
  for (const { chainPairId, pairs } of chains) {
    const { massPerMetreKg, lengthM, attachBelowBarM } = recordById(records, 'chainPair', chainPairId);
    kg += 2 * pairs * massPerMetreKg * Math.min(lengthM, Math.max(0, zM - attachBelowBarM));
  }
  return kg;
}

/** Down at the bar; a pair from above carries. */
function pairKg(records: ClubRecords, { bandPairId, hookupId }: BandOnBar, zM: number): number {
  const { label } = recordById(records, 'bandPair', bandPairId);
  const { way, anchorId } = recordById(records, 'hookup', hookupId);
  const anchor = recordById(records, 'anchor', anchorId);
  const riseM = zM - anchor.zM;
  const pathM = Math.hypot(anchor.xM, anchor.yM, riseM);
  const folds = way === 'doubled' ? 2 : 1;
  return (TURN_SHARE * folds * inventedPairN(label, folds * pathM) * riseM) / (pathM * G);
}

function powerMean(values: readonly number[]): number {
  let sum = 0;
  for (const value of values) sum += eighth(value);
  return Math.sqrt(Math.sqrt(Math.sqrt(sum / values.length)));
}

function eighth(value: number): number {
  const square = value * value;
  const fourth = square * square;
  return fourth * fourth;
}
