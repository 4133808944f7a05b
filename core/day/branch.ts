import type { RackPlan, RackPlans } from './rackPlans.ts';
import type { SharedItem } from './sharedStock.ts';

/** A part of all allocations: what each rack may hang at most, and what others must leave it. */
export interface Branch {
  /** All allocations: what cannot be in a better one is forgotten for good. */
  whole: boolean;
  /** By rack and item. */
  allowed: number[][];
  reserved: number[][];
  /** Price by rack, turn and item: where the search for the best bound starts. */
  charges: number[][][];
}

/** All allocations. */
export function wholeBranch(racks: readonly RackPlans[], items: readonly SharedItem[]): Branch {
  return {
    whole: true,
    allowed: racks.map((_, rack) =>
      items.map(({ capacity, users }) => (users.some((user) => user.rack === rack) ? capacity : 0)),
    ),
    reserved: racks.map(() => items.map(() => 0)),
    charges: racks.map(({ turns }) => turns.map(() => items.map(() => 0))),
  };
}

/** A piece is contestable while the racks together may hang more of it than there is. */
export function contestable(
  { allowed }: Pick<Branch, 'allowed'>,
  items: readonly SharedItem[],
  item: number,
): boolean {
  return allowed.reduce((sum, counts) => sum + counts[item]!, 0) > items[item]!.capacity;
}

/**
 * Splits at the piece that costs most, where those that are wanted beyond their stock count double: either the rack that takes most
 * of it hangs less, or the others leave that much to it. A rack that was promised some of it is asked last.
 */
export function split(branch: Branch, plans: readonly RackPlan[], items: readonly SharedItem[]): Branch[] {
  const open = [...items.keys()].filter((item) => contestable(branch, items, item));
  const excess = (item: number) =>
    plans.reduce((sum, plan) => sum + plan.most[item]!, 0) - items[item]!.capacity;
  const price = (item: number) =>
    branch.charges.reduce((sum, turns) => sum + turns.reduce((part, prices) => part + prices[item]!, 0), 0);
  const worth = (item: number) => price(item) * (excess(item) > 0 ? 2 : 1);
  open.sort((a, b) => worth(b) - worth(a) || excess(b) - excess(a));
  const [item] = open;
  if (item === undefined) return [];
  const wish = (rack: number) =>
    plans[rack]!.most[item]! * 1000 +
    branch.allowed[rack]![item]! +
    (branch.reserved[rack]![item]! > 0 ? -1e6 : 0);
  const rack = [...plans.keys()].reduce((a, b) => (wish(b) > wish(a) ? b : a));
  const count = Math.max(1, plans[rack]!.most[item]!);
  const less = { ...branch, whole: false, allowed: withValue(branch.allowed, rack, item, count - 1) };
  const reserved = withValue(branch.reserved, rack, item, count);
  const allowed = branch.allowed.map((counts, other) =>
    counts.map((most, one) => {
      if (one !== item || other === rack) return most;
      const elsewhere = reserved.reduce(
        (sum, kept, keeper) => (keeper === other ? sum : sum + kept[item]!),
        0,
      );
      return Math.max(0, Math.min(most, items[item]!.capacity - elsewhere));
    }),
  );
  return [less, { ...branch, whole: false, reserved, allowed }];
}

function withValue(
  table: readonly (readonly number[])[],
  rack: number,
  item: number,
  value: number,
): number[][] {
  return table.map((row, r) => row.map((old, i) => (r === rack && i === item ? value : old)));
}
