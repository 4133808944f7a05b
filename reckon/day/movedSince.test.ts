import { expect, test } from 'vitest';
import type { DayPlan } from '#contract/day/dayPlan.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { estimateLift } from '#reckon/strength/estimateLift.ts';
import { movedSince } from './movedSince.ts';
import { solveDay } from './solveDay.ts';

const records = twoLifters();
const day = records.day[0]!;
const estimate = (barKg: number) =>
  estimateLift(
    records,
    [loggedSquat('a', '2026-02-20', barKg)],
    { lifterId: 'short', lift: 'squat', on: day.date },
    populationPrior('squat'),
  )!;
const before = estimate(105);
const plan: DayPlan = solveDay(records, day, [before]);
const times = (factor: number) => ({
  ...before,
  maxKg: { ...before.maxKg, median: factor * before.maxKg.median },
});

test('a plan rests on older strength once the log has moved it by more than one per cent, up or down', () => {
  expect(movedSince(plan, [before])).toEqual([]);
  expect(movedSince(plan, [times(1.009)])).toEqual([]);
  expect(movedSince(plan, [times(1.011)])).toEqual(['short']);
  expect(movedSince(plan, [times(0.989)])).toEqual(['short']);
});

test('nothing is said of another lift, of a lifter planned by a best, or where no estimate is there', () => {
  expect(movedSince(plan, [{ ...times(1.1), lift: 'bench' }])).toEqual([]);
  expect(movedSince(plan, [{ ...times(1.1), lifterId: 'tall' }])).toEqual([]);
  expect(movedSince(plan, [])).toEqual([]);
});
