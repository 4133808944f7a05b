import { expect, test } from 'vitest';
import { type LoggedSet, loggedSet } from '#contract/records/loggedSet.ts';
import { bestsSoFar, maximumText, maximumThen, strengthInSeason } from './strengthInSeason.ts';

// Everything here is made up.

let made = 0;
const set = (doneOn: string, barKg: number, given: Partial<LoggedSet> = {}): LoggedSet =>
  loggedSet.parse({
    id: `set ${++made}`,
    lifterId: 'ana',
    doneOn,
    lift: 'squat',
    setup: { start: { way: 'free' }, barKg },
    reps: 1,
    made: 1,
    order: 1,
    loggedAt: `${doneOn}T18:00:00Z`,
    ...given,
  });
const believed = (on: string, kg: number) => ({
  on,
  median: kg,
  low80: kg - 5,
  high80: kg + 5,
  low95: kg - 9,
  high95: kg + 9,
});
const season = {
  title: 'Ana',
  firstMonday: '2026-11-02',
  weeks: 8,
  today: '2026-11-25',
  meetsAt: [6.5],
  mass: 'kg' as const,
};

test('a best is heavier than every one before it, made, straight and in the own equipment', () => {
  const box = {
    start: { way: 'box' as const, heightM: 0.4 },
    barKg: 190,
    bands: [],
    chains: [],
    rackId: null,
  };
  const sets = [
    set('2026-11-03', 150),
    set('2026-10-01', 160),
    set('2026-11-10', 170, { made: 0 }),
    set('2026-11-11', 165),
    set('2026-11-12', 190, { setup: box }),
    set('2026-11-13', 200, { equipment: 'single-ply' }),
    set('2026-11-20', 167.5, { platform: true }),
    set('2026-11-21', 180, { struckAt: '2026-11-21T19:00:00Z' }),
  ];
  expect(bestsSoFar(sets, 'raw').map(({ setup }) => setup.barKg)).toEqual([160, 165, 167.5]);
  const { bests } = strengthInSeason(
    { equipment: 'raw', estimate: undefined, maxima: undefined, sets },
    season,
  );
  // The one of October lies before the season.
  expect(bests.map(({ load, atMeet }) => [load, atMeet])).toEqual([
    [165, false],
    [167.5, true],
  ]);
});

test('the past ends where the projection begins, raw and in equipment, and each lies in its own week', () => {
  const estimate = {
    history: [believed('2026-10-19', 150), believed('2026-11-11', 155), believed('2026-11-25', 160)],
  };
  const maxima = [
    { monday: '2026-11-23', lowKg: 180, highKg: 320, held: null },
    { monday: '2026-11-30', lowKg: 175, highKg: 330, held: null },
  ];
  const known = { equipment: 'single-ply' as const, estimate, maxima, sets: [] };
  const { past, ahead } = strengthInSeason(known, season);
  // The geometric mean of 180 and 320 is 240: half as much again as 160.
  expect(past.map(({ middle }) => middle)).toEqual([232.5, 240]);
  // Wednesdays at noon: two and a half days of seven.
  expect(past.map(({ at }) => at)).toEqual([1 + 2.5 / 7, 3 + 2.5 / 7]);
  expect(ahead.map(({ at }) => at)).toEqual([3 + 2.5 / 7, 4 + 0.5 / 7, 4 + 6.5 / 7]);
  expect(strengthInSeason({ ...known, equipment: 'raw' }, season).past.at(-1)!.middle).toBe(160);
});

test('a week of which nothing was logged has in words what the line between its neighbours shows', () => {
  const estimate = { history: [believed('2026-10-29', 150), believed('2026-11-19', 156)] };
  const known = {
    equipment: 'raw' as const,
    estimate,
    maxima: [{ monday: '2026-11-23', lowKg: 151, highKg: 163, held: null }],
    sets: [],
  };
  // Thursday 5 November is a third of the way from one to the other.
  expect(maximumText(known, '2026-11-02', 'kg')).toBe('152 (147 to 157) kg');
  expect(maximumText(known, '2026-11-23', 'kg')).toBe('150 to 165 kg');
  expect(maximumText(known, '2026-10-19', 'kg')).toBe('');
});

test('in equipment the past is shown once it is known what the equipment adds, and not as raw before', () => {
  const known = { equipment: 'wraps' as const, estimate: { history: [believed('2026-11-10', 150)] } };
  expect(maximumThen({ ...known, maxima: undefined })).toEqual([]);
  expect(maximumText({ ...known, maxima: undefined, sets: [] }, '2026-11-09', 'kg')).toBe('');
});
