import { expect, test } from 'vitest';
import type { Day } from '#contract/records/day.ts';
import { weekOn } from './weekOn.ts';

const byHand = { barKg: 100, bands: [], chains: null };
const day = {
  id: 'day',
  date: '2026-12-28',
  title: 'Speed squat, third wave',
  groups: [
    {
      id: 'first',
      aim: {
        by: 'percent',
        targets: [
          { basis: 'bar', share: 0.5 },
          { basis: 'lockout', share: 0.75 },
        ],
      },
      places: [{ byCoach: byHand }, { byCoach: null }],
      away: [],
    },
    { id: 'second', aim: { by: 'capability', bottomShare: 0.6, lockoutShare: 0.8 }, places: [], away: [] },
    { id: 'third', aim: { by: 'speed', fromMps: 0.5, toMps: 0.6 }, places: [], away: [] },
  ],
} as unknown as Day;

test('five more is five points of every percentage, over the turn of the year; a zone of speed stays', () => {
  const next = weekOn(day, () => 0.05);
  expect(next.date).toBe('2027-01-04');
  expect(next.groups.map(({ aim }) => aim)).toEqual([
    {
      by: 'percent',
      targets: [
        { basis: 'bar', share: 0.55 },
        { basis: 'lockout', share: 0.8 },
      ],
    },
    { by: 'capability', bottomShare: 0.65, lockoutShare: 0.85 },
    { by: 'speed', fromMps: 0.5, toMps: 0.6 },
  ]);
  expect(next).not.toHaveProperty('id');
});

test('each group is raised by its own points', () => {
  const { groups } = weekOn(day, (id) => (id === 'second' ? -0.1 : 0));
  expect(groups.map(({ aim }) => aim)).toEqual([
    day.groups[0]!.aim,
    { by: 'capability', bottomShare: 0.5, lockoutShare: 0.7 },
    day.groups[2]!.aim,
  ]);
});

test('a bar set by hand comes along where nothing is more, and is worked out again where something is', () => {
  const [same, more] = [0, 0.05].map((points) => weekOn(day, () => points).groups[0]!.places);
  expect(same!.map(({ byCoach }) => byCoach)).toEqual([byHand, null]);
  expect(more!.map(({ byCoach }) => byCoach)).toEqual([{ ...byHand, barKg: null }, null]);
});

test.each([
  ['Speed squat, third wave', 'Speed squat, fourth wave'],
  ['Week 9', 'Week 10'],
  ['2 racks, week 3', '2 racks, week 4'],
  ['Third week', 'Fourth week'],
  ['Heavy bench', 'Heavy bench'],
  ['', ''],
])('the title "%s" counts on to "%s"', (title, next) => {
  expect(weekOn({ ...day, title }, () => 0).title).toBe(next);
});
