import { expect, it } from 'vitest';
import type { RackPlan, RackPlans } from './rackPlans.ts';
import { settle } from './settle.ts';
import type { SharedItem } from './sharedStock.ts';

/** One pair for two racks: with it each costs 0.1, without it 0.5. */
const items = [{ capacity: 1 }] as unknown as SharedItem[];
const allowed = [[1], [1]];
const planOf = (count: number, cost = count > 0 ? 0.1 : 0.5) =>
  ({ most: [count], cost }) as unknown as RackPlan;
const racksOf = (own: (left: readonly number[]) => RackPlan | null) =>
  [0, 1].map(() => ({ own })) as unknown as RackPlans[];

it('lets the rack that comes first go without where both want the one pair', () => {
  const racks = racksOf(([left]) => planOf(left!));
  const both = [planOf(1), planOf(1)];
  expect(settle(both, allowed, racks, items)).toEqual([planOf(0), planOf(1)]);
});

it('keeps what hangs where time is up and nothing as cheap is found, and is none where nothing else is found at all', () => {
  const hurried = racksOf(() => planOf(0, 0.9));
  expect(settle([planOf(1), planOf(0)], allowed, hurried, items)).toEqual([planOf(1), planOf(0)]);
  const none = racksOf(() => null);
  expect(settle([planOf(1), planOf(1)], allowed, none, items)).toBeNull();
});
