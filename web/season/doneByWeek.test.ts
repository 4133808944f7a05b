import { expect, test } from 'vitest';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { loggedSet } from '#contract/records/loggedSet.ts';
import { doneByWeek } from './doneByWeek.ts';

const set = (given: Partial<LoggedSet>): LoggedSet =>
  loggedSet.parse({
    id: 'set',
    lifterId: 'ana',
    doneOn: '2026-12-31',
    lift: 'squat',
    setup: { start: { way: 'free' }, barKg: 100 },
    reps: 3,
    made: 3,
    order: 1,
    loggedAt: '2026-12-31T18:00:00Z',
    ...given,
  });
const tell = {
  lockoutKg: ({ setup }: LoggedSet) => setup.barKg,
  workJ: ({ setup, made }: LoggedSet) => 5 * setup.barKg * made,
  referenceKg: 200,
};
const bar = (barKg: number) => ({ ...set({}).setup, barKg });

test('made lifts of one week count together across the turn of the year; struck sets and misses do not', () => {
  const sets = [
    set({}),
    set({ doneOn: '2027-01-03', reps: 2, made: 1, setup: bar(150) }),
    set({ doneOn: '2027-01-02', made: 0, setup: bar(190) }),
    set({ doneOn: '2027-01-02', struckAt: '2027-01-02T19:00:00Z' }),
    set({ lift: 'bench' }),
    set({ doneOn: '2027-01-04' }),
  ];
  // 28 December 2026 is the Monday of ISO week 2026-W53.
  expect([...doneByWeek(sets, 'squat', tell)]).toEqual([
    ['2026-12-28', { lifts: 4, peakShare: 0.75, workJ: 5 * (3 * 100 + 150) }],
    ['2027-01-04', { lifts: 3, peakShare: 0.5, workJ: 5 * 300 }],
  ]);
});

test('a load that cannot be told any more leaves the lifts and no share', () => {
  const untold = doneByWeek([set({})], 'squat', {
    lockoutKg: () => null,
    workJ: () => null,
    referenceKg: 200,
  });
  expect(untold.get('2026-12-28')).toEqual({ lifts: 3, peakShare: null, workJ: null });
  const nothingToShare = doneByWeek([set({})], 'squat', { ...tell, referenceKg: null });
  expect(nothingToShare.get('2026-12-28')).toEqual({ lifts: 3, peakShare: null, workJ: 1500 });
});
