import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxHeights, boxOfHeight } from '#contract/day/boxHeights.ts';
import type { Box } from '#contract/records/gear.ts';
import type { LiftHeights } from '#contract/records/lifters.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { assembleHeights, type HeightRecords } from '#reckon/lifter/assembleHeights.ts';
import { ownBoxesOf } from './ownBoxesOf.ts';

const TODAY = '2026-12-01';
const [someone] = twoLifters().lifter;
const stature = (statureM: number | null, liftHeights: LiftHeights[] = []): HeightRecords => ({
  lifter: [{ ...someone!, id: 'one', statureM }],
  liftHeights,
});
const heights = (start: LiftHeights['start'], bottomM: number): LiftHeights => ({
  id: `${start.way} ${start.heightM}`,
  lifterId: 'one',
  lift: 'squat',
  start,
  bottomM,
  lockoutM: 1.45,
  bottomForwardM: null,
  measuredOn: '2026-11-01',
});
const box = (heightM: number) => ({ way: 'box' as const, heightM });
const piece = (sort: Box['sort'], heightM: number, pieces: number): Box => ({
  id: `${sort} ${heightM}`,
  label: `${sort} ${heightM}`,
  sort,
  heightM,
  pieces,
  note: '',
});
const anyGear = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: 25, max: 45 }), { minLength: 1, maxLength: 3 }),
    fc.uniqueArray(fc.integer({ min: 1, max: 5 }), { maxLength: 2 }),
  )
  .map(([boxes, mats]) => [
    ...boxes.map((cm) => piece('box', cm / 100, 1)),
    ...mats.map((cm) => piece('mat', cm / 100, 2)),
  ]);
const anyDepth = fc.integer({ min: -15, max: 30 }).map((cm) => cm / 100);

const wanted = (records: HeightRecords) => ownBoxesOf(records, [], 'one', [0, 0.05], TODAY);

describe('the own box of a lifter', () => {
  it('is one that the Day screen builds, and brings the bar nearest to the depth that is asked for', () => {
    fc.assert(
      fc.property(anyGear, anyDepth, fc.integer({ min: 145, max: 205 }), (gear, depthM, cm) => {
        const records = stature(cm / 100);
        const built = boxHeights(gear);
        const [own] = ownBoxesOf(records, built, 'one', [depthM], TODAY);
        expect(boxOfHeight(built, own!.heightM)).toBeDefined();
        // Where the bar is on each box, by the heights that the day goes by.
        const offOf = (heightM: number) => {
          const { bottomM, range } = assembleHeights(records, 'one', 'squat', box(heightM), TODAY);
          return Math.abs(bottomM - range.fromM - depthM);
        };
        const least = Math.min(...built.map(({ heightM }) => offOf(heightM)));
        expect(offOf(own!.heightM)).toBeLessThan(least + MILLIMETRE_M);
      }),
    );
  });

  it('is worked back from a box that was measured with the lifter, and estimated or assumed before', () => {
    // On 40 cm the bar is 3 cm above the free bottom, so that 37 cm is parallel.
    const measured = [heights({ way: 'free', heightM: null }, 0.9), heights(box(0.4), 0.93)];
    expect(wanted(stature(1.8, measured))).toEqual([
      { aboveParallelM: 0, wantedM: 0.37, known: 'measured', heightM: 0.37 },
      { aboveParallelM: 0.05, wantedM: 0.42, known: 'measured', heightM: 0.42 },
    ]);
    // By Drillis & Contini 1966, as model.md has it: 0.285 x 0.94 x 1.80 m - 0.10 m = 0.382 m, to a centimetre where the club has no box.
    expect(wanted(stature(1.8))[0]).toEqual({
      aboveParallelM: 0,
      wantedM: 0.382,
      known: 'estimated',
      heightM: 0.38,
    });
    expect(wanted(stature(null))[0]).toMatchObject({ known: 'assumed' });
    // A measured box alone tells nothing of where the lifter is at parallel.
    expect(wanted(stature(1.8, [heights(box(0.4), 0.93)]))[0]).toMatchObject({ known: 'estimated' });
  });
});

/** A wanted height is read to a millimetre. */
const MILLIMETRE_M = 0.001;
