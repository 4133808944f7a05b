import { expect, test } from 'vitest';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { lastTimeOf } from './lastTimeOf.ts';

const box = (heightM: number) => ({ way: 'box' as const, heightM });
const squat = (id: string, doneOn: string, barKg: number, more: Partial<LoggedSet> = {}, boxM = 0.36) => {
  const set = loggedSquat(id, doneOn, barKg);
  return { ...set, ...more, setup: { ...set.setup, start: box(boxM) } };
};
const idsOf = (sets: LoggedSet[], before = '2026-11-25') =>
  lastTimeOf(sets, { lift: 'squat', start: box(0.36), before }).map(({ id }) => id);

test('last time is the newest earlier day from the same box, by its heaviest bar', () => {
  const log = [
    squat('old', '2026-11-03', 150),
    squat('warm-up', '2026-11-10', 70),
    squat('first', '2026-11-10', 100),
    squat('second', '2026-11-10', 100),
    squat('low box', '2026-11-17', 120, {}, 0.3),
    squat('struck', '2026-11-18', 100, { struckAt: '2026-11-18T10:00:00.000Z' }),
    squat('today', '2026-11-25', 105),
  ];
  expect(idsOf(log)).toEqual(['first', 'second']);
  expect(idsOf(log, '2026-11-10')).toEqual(['old']);
});

test('another box is told where this one was never used, and nothing where the lift is new', () => {
  expect(idsOf([squat('low box', '2026-11-17', 120, {}, 0.3)])).toEqual(['low box']);
  expect(idsOf([squat('bench', '2026-11-17', 80, { lift: 'bench' })])).toEqual([]);
});

test('sets of other reps with the same bar are another piece of work', () => {
  const log = [
    squat('double', '2026-11-10', 100, { reps: 2, made: 2 }),
    squat('triple', '2026-11-10', 100, { reps: 3, made: 3 }),
  ];
  expect(idsOf(log)).toEqual(['double']);
});

test('what is on record of the day itself is this time, though it was trained before its date', () => {
  const log = [squat('then', '2026-11-10', 100), squat('now', '2026-11-20', 105, { dayId: 'wave-4' })];
  const asked = { lift: 'squat' as const, start: box(0.36), before: '2026-11-25', ofDay: 'wave-4' };
  expect(lastTimeOf(log, asked).map(({ id }) => id)).toEqual(['then']);
});
