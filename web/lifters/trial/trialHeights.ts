import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { estimateHeights, estimateParallelBox } from '#core/lifter/estimateHeights.ts';
import { startHeights } from '#core/lifter/startHeights.ts';

/** Where the bar starts and ends for a lifter, and how that is known. */
export interface TrialHeights {
  bottomM: number;
  lockoutM: number;
  /** The lifter's own full range. */
  range: { fromM: number; toM: number };
  /** `measured` at this very start, `shifted` from a measured one, `estimated` from stature. */
  from: 'measured' | 'shifted' | 'estimated';
}

/** Two starts closer than this are the same (m): half of what a tape tells. */
const sameHeightM = 0.005;

/** Heights for a start: measured there; else shifted from the nearest measured one; else from stature. Null: nothing known. */
export function trialHeights(
  club: ClubRecords,
  lifterId: string,
  lift: Lift,
  start: Start,
): TrialHeights | null {
  const lifter = club.lifter.find((candidate) => candidate.id === lifterId);
  const measured = club.liftHeights.filter((record) => record.lifterId === lifterId && record.lift === lift);
  const statureM = lifter?.statureM ?? null;
  const own = measured.find((record) => record.start.way === 'free');
  const free = own ?? (statureM === null ? null : estimateHeights(lift, statureM));
  if (free === null) return null;
  const range = { fromM: free.bottomM, toM: free.lockoutM };
  if (start.heightM === null) {
    const there = measured.find((record) => record.start.way === start.way) ?? free;
    return { bottomM: there.bottomM, lockoutM: there.lockoutM, range, from: own ? 'measured' : 'estimated' };
  }
  const { heightM } = start;
  const away = (other: Start) => Math.abs((other.heightM ?? 0) - heightM);
  const [near] = measured
    .filter((record) => record.start.way === start.way)
    .sort((a, b) => away(a.start) - away(b.start));
  if (near && start.way !== 'deficit') {
    const byM = heightM - (near.start.heightM ?? 0);
    const from = Math.abs(byM) < sameHeightM ? 'measured' : 'shifted';
    return { bottomM: near.bottomM + byM, lockoutM: near.lockoutM, range, from };
  }
  const parallelBoxM = statureM === null ? heightM : estimateParallelBox(statureM).heightM;
  const way =
    start.way === 'free' || start.way === 'paused' ? { way: start.way } : { way: start.way, heightM };
  return {
    ...startHeights(free, way, parallelBoxM),
    from: own && start.way !== 'box' ? 'shifted' : 'estimated',
  };
}
