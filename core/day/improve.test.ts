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

it('swaps two pieces where neither rack gains by giving one away alone', () => {
  const two = ['p', 'q'].map((id) => ({ ...items[0]!, id }));
  // By what hangs of p and q: nothing, p, q or both.
  const costs = [
    [1, 0.5, 0.1, 0.05],
    [1, 0.1, 0.5, 0.05],
  ];
  const hanging = (rack: number, p: number, q: number) =>
    ({ most: [p, q], cost: costs[rack]![p + 2 * q]! }) as unknown as RackPlan;
  const choosing = costs.map((_, rack) => ({
    own: ([p, q]: number[]) =>
      [hanging(rack, 0, 0), hanging(rack, p!, 0), hanging(rack, 0, q!), hanging(rack, p!, q!)].reduce(
        (a, b) => (b.cost < a.cost ? b : a),
      ),
  })) as unknown as RackPlans[];
  const swapped = [hanging(0, 0, 1), hanging(1, 1, 0)];
  expect(improve([hanging(0, 1, 0), hanging(1, 0, 1)], choosing, two, () => false)).toEqual(swapped);
  expect(improve(swapped, choosing, two, () => false)).toBe(swapped);
});
