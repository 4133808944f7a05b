import type { KnownHow } from '#contract/records/knownHow.ts';
import { parallelBox } from '#core/lifter/fullRange.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { assembleHeights, type HeightRecords } from './assembleHeights.ts';

/** The box that stops a lifter at the free bottom of the squat (m): measured where a box and the free squat were. */
export function parallelBoxOf(
  records: HeightRecords,
  lifterId: string,
  on: string,
): { heightM: number; known: KnownHow } {
  // Any box tells it; the floor is one that nobody was measured on, so that the newest measured one decides.
  const floor = { way: 'box' as const, heightM: 0 };
  const { bottomM, range } = assembleHeights(records, lifterId, 'squat', floor, on);
  const has = (way: 'free' | 'box') =>
    records.liftHeights.some(
      (one) => one.lifterId === lifterId && one.lift === 'squat' && one.start.way === way,
    );
  const { statureM } = recordById(records, 'lifter', lifterId);
  const worked = statureM === null ? 'assumed' : 'estimated';
  return {
    heightM: parallelBox(0, bottomM, range.fromM),
    known: has('free') && has('box') ? 'measured' : worked,
  };
}
