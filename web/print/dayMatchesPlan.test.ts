import { expect, test } from 'vitest';
import type { Day, Group } from '#contract/records/day.ts';
import { dayMatchesPlan } from './dayMatchesPlan.ts';
import { inventedPlan } from './tests/inventedPlan.ts';

const place = (lifterId: string, rackId: string) => ({ lifterId, rackId, start: null, byCoach: null });

const group: Group = {
  id: 'group',
  title: 'Speed squat',
  work: 'speed',
  lift: 'squat',
  start: { way: 'box', heightM: 0.36 },
  aim: { by: 'capability', bottomShare: 0.8, lockoutShare: 0.4 },
  blocks: [
    { sets: 2, reps: 2, restSeconds: 75, shareOfAim: 60 / 90 },
    { sets: 8, reps: 2, restSeconds: 75, shareOfAim: 1 },
  ],
  places: [place('short', 'north'), place('tall', 'north'), place('strong', 'south')],
};

const day = (change: Partial<Group>): Day => ({
  id: 'day',
  date: '2026-11-26',
  title: '',
  groups: [{ ...group, ...change }],
  oneSetPull: 0.5,
  note: '',
});

test('a plan is that of the day until lifters, racks, order, starts, sets or own settings change', () => {
  const plan = inventedPlan();
  expect(dayMatchesPlan(day({}), plan)).toBe(true);
  expect(dayMatchesPlan(day({ title: 'Another name' }), plan)).toBe(true);
  const [short, tall, strong] = group.places;
  const changed: Partial<Group>[] = [
    { places: [tall!, short!, strong!] },
    { places: [short!, tall!] },
    { places: [short!, tall!, { ...strong!, rackId: 'north' }] },
    { places: [short!, tall!, { ...strong!, byCoach: { barKg: 100, bands: null, chains: null } }] },
    { start: { way: 'free', heightM: null } },
    { blocks: [group.blocks[0]!] },
    { lift: 'bench' },
    { aim: { by: 'capability', bottomShare: 0.7, lockoutShare: 0.4 } },
    { aim: { by: 'speed', fromMps: 0.5, toMps: 0.6 } },
  ];
  expect(dayMatchesPlan({ ...day({}), oneSetPull: 1 }, plan)).toBe(false);
  for (const change of changed) expect(dayMatchesPlan(day(change), plan)).toBe(false);
});

test('a lifter for whom nothing could be worked out does not make the plan old', () => {
  const plan = inventedPlan();
  plan.groups[0]!.places[2]!.solved = null;
  expect(dayMatchesPlan(day({}), plan)).toBe(true);
});
