import type { Lift, Start } from '#contract/records/lift.ts';
import type { LiftHeights } from '#contract/records/lifters.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { estimateHeights } from '#core/lifter/estimateHeights.ts';
import type { LifterRecords } from './lifterRecords.ts';

/** A line of the heights table: measured, or estimated from stature with its standard deviations. */
export interface HeightRow {
  lift: Lift;
  start: Start;
  bottomM: number;
  lockoutM: number;
  measured: LiftHeights | null;
  bottomSdM: number;
  lockoutSdM: number;
}

/** Every measured height, and for each lift without a measured full range its estimate, where stature allows one. */
export function heightRows({ lifter, liftHeights }: LifterRecords): HeightRow[] {
  return liftWords.flatMap(({ value: lift }) => {
    const measured = liftHeights
      .filter((record) => record.lift === lift)
      .sort((a, b) => a.bottomM - b.bottomM)
      .map((record) => ({ ...record, measured: record, bottomSdM: 0, lockoutSdM: 0 }));
    const hasFree = measured.some(({ start }) => start.way === 'free');
    if (hasFree || lifter.statureM === null) return measured;
    const free: Start = { way: 'free', heightM: null };
    return [{ lift, start: free, measured: null, ...estimateHeights(lift, lifter.statureM) }, ...measured];
  });
}
