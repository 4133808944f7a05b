import type { Branch } from './branch.ts';
import type { RackPlan, RackPlans } from './rackPlans.ts';
import type { SharedItem } from './sharedStock.ts';

/**
 * Makes plans that want too much of something into ones that can hang at once: each rack in turn, those that pay least
 * for what is contested first, takes its cheapest rotation from what the others leave, until nobody gains. Null where
 * that does not end within the stock.
 */
export function settle(
  plans: readonly RackPlan[],
  branch: Branch,
  racks: readonly RackPlans[],
  items: readonly SharedItem[],
): RackPlan[] | null {
  const settled = [...plans];
  const wanted = (item: number) => settled.reduce((sum, plan) => sum + plan.most[item]!, 0);
  const contested = items.map(({ capacity }, item) => wanted(item) > capacity);
  const paid = (rack: number) =>
    items.reduce((sum, _, item) => {
      const price = branch.charges[rack]!.reduce((total, charge) => total + charge[item]!, 0);
      return contested[item] ? sum + price * plans[rack]!.most[item]! : sum;
    }, 0);
  const order = [...racks.keys()].sort((a, b) => paid(a) - paid(b));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = settled.map((plan) => plan.cost);
    for (const rack of order) {
      const left = items.map(({ capacity }, item) => {
        const others = wanted(item) - settled[rack]!.most[item]!;
        return Math.max(0, Math.min(branch.allowed[rack]![item]!, capacity - others));
      });
      const plan = racks[rack]!.cheapest(left, withoutCharges(branch.charges[rack]!));
      const before = settled[rack]!;
      const stays = before.most.every((count, item) => count <= left[item]!);
      // Where time was up the plan found need not be cheaper than the one that already hangs.
      if (plan !== null && !(stays && before.cost <= plan.cost)) settled[rack] = plan;
    }
    if (settled.every((plan, rack) => plan.cost > before[rack]! - 1e-9)) break;
  }
  return items.every(({ capacity }, item) => wanted(item) <= capacity) ? settled : null;
}

const MOST_ROUNDS = 4;

function withoutCharges(charges: readonly (readonly number[])[]): number[][] {
  return charges.map((turn) => turn.map(() => 0));
}
