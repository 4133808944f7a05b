import { describe, expect, it } from 'vitest';
import type { RecordOf } from '#contract/records/allKinds.ts';
import type { Start } from '#contract/records/lift.ts';
import { assembleHeights } from './assembleHeights.ts';

const lifter: RecordOf<'lifter'> = {
  id: 'tall',
  name: 'Tall',
  bornOn: null,
  category: 'other',
  statureM: 1.95,
  equipment: 'raw',
  leftOn: null,
  labels: [],
  note: '',
};
const box = (heightM: number): Start => ({ way: 'box', heightM });
const look = (start: Start, bottomM: number, lockoutM: number): RecordOf<'liftHeights'> => ({
  id: `${start.way} ${start.heightM}`,
  lifterId: 'tall',
  lift: 'squat',
  start,
  bottomM,
  lockoutM,
  bottomForwardM: null,
  measuredOn: '2026-11-01',
});
const heights = (looks: RecordOf<'liftHeights'>[], start: Start) =>
  assembleHeights({ lifter: [lifter], liftHeights: looks }, 'tall', 'squat', start, '2026-11-25');

describe('where only a box was measured', () => {
  it('a low one does not lie below the range that strength counts from by more than the box is below parallel', () => {
    // A box of 30 cm stops this lifter at 80 cm; another of 40 cm must then stop them 10 cm higher.
    const looks = [look(box(0.3), 0.8, 1.58)];
    const low = heights(looks, box(0.3));
    const high = heights(looks, box(0.4));
    expect(low.bottomM).toBe(0.8);
    expect(low.range.toM).toBe(1.58);
    expect(high.bottomM - low.bottomM).toBeCloseTo(0.1, 9);
    expect(high.range.fromM).toBeCloseTo(low.range.fromM, 9);
    // The parallel box of 1.95 m: 0.285 x 0.94 x 1.95 - 0.10 = 0.4224 m (docs/model.md, lifter; estimated).
    expect(low.range.fromM).toBeCloseTo(0.8 + 0.4224 - 0.3, 3);
  });
});

it('where the full range was measured, the box counts from it', () => {
  const free: Start = { way: 'free', heightM: null };
  const measured = heights([look(free, 0.95, 1.58), look(box(0.33), 0.93, 1.58)], box(0.33));
  expect(measured).toMatchObject({ bottomM: 0.93, range: { fromM: 0.95, toM: 1.58 }, known: 'measured' });
});

describe('how well heights are known', () => {
  const free: Start = { way: 'free', heightM: null };
  const looks = [look(free, 0.95, 1.58), look(box(0.33), 0.93, 1.58)];
  const met = { bottomSdM: 0.02, lockoutSdM: 0.02 };

  it('is to 2 cm where they were measured: a bar is not met twice at the same height', () => {
    expect(heights(looks, free)).toMatchObject(met);
    expect(heights(looks, box(0.33))).toMatchObject(met);
    // Worked back from a measured box, or held by pins: by nothing more.
    expect(heights(looks, box(0.4))).toMatchObject(met);
    expect(heights(looks, { way: 'pins', heightM: 1 })).toMatchObject(met);
  });

  it('is as little as people of a stature are alike where they were not, and those 2 cm beside it in squares', () => {
    // Standard deviations as shares of stature: lockout 0.015, bottom 0.025 (docs/model.md, lifter; assumptions).
    const { bottomSdM, lockoutSdM } = heights([], free);
    expect(lockoutSdM).toBeCloseTo(Math.hypot(0.015 * 1.95, 0.02), 12);
    expect(bottomSdM).toBeCloseTo(Math.hypot(0.025 * 1.95, 0.02), 12);
    expect(heights([], box(0.4)).bottomSdM).toBeCloseTo(Math.hypot(0.025 * 1.95, 0.02, 0.025 * 1.95), 12);
  });
});

const deadlift = (start: Start, bottomM: number, lockoutM: number) =>
  assembleHeights(
    { lifter: [lifter], liftHeights: [{ ...look(start, bottomM, lockoutM), lift: 'deadlift' }] },
    'tall',
    'deadlift',
    { way: 'free', heightM: null },
    '2026-11-25',
  );

describe('where only a start of another height was measured', () => {
  it('blocks are taken off the bottom, and what the lifter stood on off lockout', () => {
    // Discs of 45 cm lie with the bar 22.5 cm above the floor.
    const onBlocks = deadlift({ way: 'blocks', heightM: 0.1 }, 0.325, 0.9);
    expect([onBlocks.bottomM, onBlocks.lockoutM]).toEqual([expect.closeTo(0.225, 9), 0.9]);
    const onDeficit = deadlift({ way: 'deficit', heightM: 0.05 }, 0.225, 0.95);
    expect([onDeficit.bottomM, onDeficit.lockoutM]).toEqual([0.225, expect.closeTo(0.9, 9)]);
  });

  it('pins lower the bottom where they lie below it, and never raise it', () => {
    const pins = (heightM: number) => heights([look({ way: 'pins', heightM }, heightM, 1.58)], box(0.4));
    expect(pins(0.7).range.fromM).toBe(0.7);
    expect(pins(1.3).range.fromM).toBe(heights([], box(0.4)).range.fromM);
  });
});

it('goes by what was measured last up to the day, not by what came later', () => {
  const free: Start = { way: 'free', heightM: null };
  const measuredOn = (date: string, bottomM: number) => ({ ...look(free, bottomM, 1.58), measuredOn: date });
  const looks = [
    measuredOn('2026-11-26', 0.9),
    measuredOn('2026-11-25', 0.93),
    measuredOn('2026-06-01', 0.97),
  ];
  expect(heights(looks, free).bottomM).toBe(0.93);
});
