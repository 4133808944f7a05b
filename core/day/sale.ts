import type { Charges } from './costTable.ts';
import type { SharedItem } from './sharedStock.ts';

/** Costs closer than this are equal: rounding of sums. */
const EPSILON = 1e-9;

interface Bounded {
  /** What no allocation goes below at these prices. */
  bound: number;
  charges: readonly Charges[];
  allowed: readonly (readonly number[])[];
}

/** Sells the stock of each piece to the racks that offer most for one, each at most what it may hang. */
export function sell(
  allowed: readonly (readonly number[])[],
  items: readonly SharedItem[],
  charges: readonly Charges[],
): { sold: number[][]; income: number } {
  const sales = items.map(({ capacity }, item) => itemSale(allowed, charges, item)(capacity, null));
  return {
    sold: allowed.map((_, rack) => sales.map(({ sold }) => sold[rack]!)),
    income: sales.reduce((sum, { income }) => sum + income, 0),
  };
}

/**
 * What each rack may hang in an allocation that is cheaper than `least`: a rack that offers so little for a piece that
 * giving it the piece would lift the bound to `least` goes without.
 */
export function tightened(
  { bound, charges, allowed }: Bounded,
  items: readonly SharedItem[],
  least: number,
): number[][] {
  const tight = allowed.map((counts) => [...counts]);
  items.forEach(({ capacity }, item) => {
    const sale = itemSale(allowed, charges, item);
    const { income } = sale(capacity, null);
    allowed.forEach((counts, rack) => {
      const lifted = (count: number) => bound + income - sale(capacity, { rack, count }).income;
      let count = counts[item]!;
      while (count > 0 && lifted(count) >= least - EPSILON) count--;
      tight[rack]![item] = count;
    });
  });
  return tight;
}

/** The sale of one piece; `first`: a rack that gets so many whatever it offers. */
function itemSale(allowed: readonly (readonly number[])[], charges: readonly Charges[], item: number) {
  const prices = charges.map((turns) => turns.reduce((sum, charge) => sum + charge[item]!, 0));
  const order = [...prices.keys()].sort((a, b) => prices[b]! - prices[a]!);
  return (capacity: number, first: { rack: number; count: number } | null) => {
    const sold = prices.map(() => 0);
    if (first !== null) sold[first.rack] = first.count;
    let left = capacity - (first?.count ?? 0);
    let income = first === null ? 0 : first.count * prices[first.rack]!;
    for (const rack of order) {
      const count = Math.min(left, allowed[rack]![item]! - sold[rack]!);
      sold[rack]! += count;
      income += count * prices[rack]!;
      left -= count;
    }
    return { sold, income };
  };
}
