import { expect, test } from 'vitest';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { recentWork } from './recentWork.ts';

const on = '2026-06-28';
const daysAgo = (days: number) => new Date(Date.parse(on) - days * 86_400_000).toISOString().slice(0, 10);
const band = { bands: [{ bandPairId: 'light', hookupId: 'doubled' }] };
const box = (heightM: number) => ({ start: { way: 'box' as const, heightM } });
const done = (days: number, change: Parameters<typeof loggedSquat>[3] = {}): LoggedSet =>
  loggedSquat(`${days} ${JSON.stringify(change)}`, daysAgo(days), 100, change);

test('a setup is counted by the weeks it was used in, and is new only if the weeks before had none of it', () => {
  const sets = [0, 2, 7, 14, 21].map((days) => done(days, { with: band }));
  const before = [done(28, { with: band }), done(40, { with: box(0.36) })];
  const work = recentWork([...before, ...sets, done(3, { with: box(0.3) })], 'squat', on, 4);
  expect(work.used.map(({ inWeeks, isNew }) => [inWeeks, isNew])).toEqual([
    [4, false],
    [1, true],
  ]);
  expect(work.dropped.map(({ setup }) => setup.start.heightM)).toEqual([0.36]);
  expect([work.sets, work.setsBefore]).toEqual([6, 2]);
});

test('other lifts, struck sets, sets of the future and of long ago are no part of it', () => {
  const work = recentWork(
    [done(1, { lift: 'deadlift' }), done(2, { struckAt: `${on}T00:00:00Z` }), done(-1), done(56)],
    'squat',
    on,
    4,
  );
  expect(work).toEqual({ weeks: 4, sets: 0, setsBefore: 0, used: [], dropped: [] });
});

test('the bar is no part of a setup: heavier sets with the same bands are the same work', () => {
  const work = recentWork(
    [loggedSquat('a', daysAgo(1), 100, { with: band }), loggedSquat('b', daysAgo(8), 120, { with: band })],
    'squat',
    on,
    4,
  );
  expect(work.used).toHaveLength(1);
  expect(work.used[0]!.inWeeks).toBe(2);
});
