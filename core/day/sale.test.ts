import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { sell, tightened } from './sale.ts';

const sales = fc.record({
  capacity: fc.integer({ min: 1, max: 3 }),
  /** Price of one piece for each rack, of one turn each, and how many it may hang. */
  offers: fc.array(
    fc.record({
      price: fc.integer({ min: 0, max: 100 }).map((n) => n / 100),
      most: fc.integer({ min: 0, max: 3 }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  room: fc.integer({ min: 0, max: 100 }).map((n) => n / 100),
});

/** All ways to hand the stock out, as the counts of each rack. */
function waysToSell(capacity: number, mosts: readonly number[]): number[][] {
  const [most, ...others] = mosts;
  if (most === undefined) return [[]];
  return Array.from({ length: Math.min(most, capacity) + 1 }, (_, count) =>
    waysToSell(capacity - count, others).map((rest) => [count, ...rest]),
  ).flat();
}

it('sells for as much as the best of all ways to hand the stock out', () => {
  fc.assert(
    fc.property(sales, ({ capacity, offers }) => {
      const incomeOf = (way: readonly number[]) =>
        way.reduce((sum, count, rack) => sum + count * offers[rack]!.price, 0);
      const ways = waysToSell(
        capacity,
        offers.map(({ most }) => most),
      );
      const { sold, income } = sell(
        offers.map(({ most }) => [most]),
        [{ id: 'c', sort: 'chainPair', capacity, clash: false, users: [] }],
        offers.map(({ price }) => [[price]]),
      );
      expect(income).toBeCloseTo(Math.max(...ways.map(incomeOf)), 9);
      expect(incomeOf(sold.map(([count]) => count!))).toBeCloseTo(income, 9);
      expect(ways.map(String)).toContain(String(sold));
    }),
  );
});

it('lets a rack go without only what no sale leaves it below the cheapest allocation', () => {
  fc.assert(
    fc.property(sales, ({ capacity, offers, room }) => {
      const mosts = offers.map(({ most }) => Math.min(most, capacity));
      const ways = waysToSell(capacity, mosts);
      const incomeOf = (way: readonly number[]) =>
        way.reduce((sum, count, rack) => sum + count * offers[rack]!.price, 0);
      const best = Math.max(...ways.map(incomeOf));
      const [bound, least] = [1, 1 + room];
      const tight = tightened(
        {
          bound,
          charges: offers.map(({ price }) => [[price]]),
          allowed: mosts.map((most) => [most]),
        },
        [{ id: 'c', sort: 'chainPair', capacity, clash: false, users: [] }],
        least,
      );
      mosts.forEach((most, rack) => {
        // Costs of all sales in which the rack gets so many, above the bound.
        const lifted = (count: number) =>
          Math.min(...ways.filter((way) => way[rack]! >= count).map((way) => best - incomeOf(way)));
        for (let count = 1; count <= most; count++) {
          if (lifted(count) < room - 1e-6) expect(tight[rack]![0]).toBeGreaterThanOrEqual(count);
          if (lifted(count) > room + 1e-6) expect(tight[rack]![0]).toBeLessThan(count);
        }
      });
    }),
  );
});
