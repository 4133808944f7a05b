import { expect, test } from 'vitest';
import type { PlanPlace } from '#contract/day/dayPlan.ts';
import { freshPlace } from '#contract/day/freshPlace.ts';
import type { Start } from '#contract/records/lift.ts';
import { overtaken } from './overtaken.ts';

const box = (heightM: number): Start => ({ way: 'box', heightM });
const hung = { bandPairId: '22', label: '22-A', hookupId: 'low', hookupWords: '' };
const planned = {
  rackId: 'north',
  start: box(0.36),
  moreShare: 0,
  solved: { set: { bands: [hung], chains: [] } },
} as unknown as PlanPlace;
const group = { lift: 'squat', racks: [{ rackId: 'north', label: 'North rack' }] } as never;
const pair = { id: '22', label: '22-A', retiredOn: null };
const place = freshPlace('a', 'north');
const now = { group: { start: box(0.36) }, place, date: '2026-12-01' };
const written = (_: unknown, { heightM }: Start) => `box ${heightM}`;
const said = (change: Partial<typeof now>, bandPair: object[] = [pair]) =>
  overtaken(group, planned, { ...now, ...change }, { bandPair, chainPair: [] } as never, written);

test('a bar stands while start, rack and gear are those it was worked out for', () => {
  expect(said({})).toEqual([]);
});

test('another box or another rack is told by what the bar was worked out for', () => {
  expect(said({ place: { ...place, start: box(0.43) } })).toEqual(['Worked out for box 0.36.']);
  expect(said({ place: { ...place, rackId: 'south' } })).toEqual(['Worked out for North rack.']);
  const gone = { ...planned, rackId: 'removed' };
  expect(overtaken(group, gone, now, { bandPair: [pair], chainPair: [] } as never, written)).toEqual([
    'Worked out for another rack.',
  ]);
});

test('another aim than the group has, set or taken back since, is told', () => {
  expect(said({ place: { ...place, moreShare: 0.05 } })).toEqual(['Worked out as the group aims.']);
  expect(
    overtaken(
      group,
      { ...planned, moreShare: -0.025 },
      now,
      { bandPair: [pair], chainPair: [] } as never,
      written,
    ),
  ).toEqual(['Worked out for 2.5 points less than the group.']);
});

test('a pair that is retired by the day, or gone, must not hang; one that is retired later may', () => {
  const out = ['22-A is out of service: do not hang it.'];
  expect(said({}, [{ ...pair, retiredOn: '2026-12-01' }])).toEqual(out);
  expect(said({}, [])).toEqual(out);
  expect(said({}, [{ ...pair, retiredOn: '2026-12-02' }])).toEqual([]);
});

test('chains that are gone must not hang either', () => {
  const chained = { bands: [], chains: [{ chainPairId: 'c', label: '13 mm', pairs: 1 }] };
  const two = { bands: [], chains: [{ chainPairId: 'c', label: '13 mm', pairs: 2 }] };
  const withChain = { ...planned, solved: { set: chained } } as unknown as PlanPlace;
  const saidOf = (chainPair: object[], plan = withChain) =>
    overtaken(group, plan, now, { bandPair: [], chainPair } as never, written);
  expect(saidOf([{ id: 'c', pairs: 1 }])).toEqual([]);
  expect(saidOf([{ id: 'c', pairs: 0 }])).toEqual(['Chain 13 mm is out of service: do not hang it.']);
  expect(saidOf([])).toEqual(['Chain 13 mm is out of service: do not hang it.']);
  const withTwo = { ...planned, solved: { set: two } } as unknown as PlanPlace;
  expect(saidOf([{ id: 'c', pairs: 1 }], withTwo)).toEqual([
    'Only 1 pair of chain 13 mm left: do not count on 2.',
  ]);
});
