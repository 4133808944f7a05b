import { expect, it } from 'vitest';
import { improve } from './improve.ts';
import type { RackPlan, RackPlans } from './rackPlans.ts';
import type { SharedItem } from './sharedStock.ts';

/** Two racks want one pair: it costs the first 0.2 to go without, and the second 0.5. */
const items = [
  { id: 'p', capacity: 1, users: [0, 1].map((rack) => ({ rack, hookups: [0], chain: null })) },
] as unknown as SharedItem[];
const without = [0.2, 0.5];
const planOf = (rack: number, count: number) =>
  ({ most: [count], cost: count > 0 ? 0 : without[rack]! }) as unknown as RackPlan;
const racks = without.map((_, rack) => ({
  own: ([most]: number[]) => planOf(rack, most!),
})) as unknown as RackPlans[];
const first = [planOf(0, 1), planOf(1, 0)];

it('hands the pair to whom it helps more, and changes nothing once time is up', () => {
  expect(improve(first, racks, items, () => false)).toEqual([planOf(0, 0), planOf(1, 1)]);
  expect(improve(first, racks, items, () => true)).toBe(first);
});
