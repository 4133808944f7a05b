import type { RackPlan, RackPlans } from './rackPlans.ts';
import type { SharedItem } from './sharedStock.ts';

/**
 * Makes plans that want too much of something into ones that can hang at once: each rack in turn takes its cheapest
 * rotation from what the others leave, until nobody gains. Null where that does not end within the stock. `allowed`: the most of each item that each rack may hang.
 */
export function settle(
  plans: readonly RackPlan[],
  allowed: readonly (readonly number[])[],
  racks: readonly RackPlans[],
  items: readonly SharedItem[],
): RackPlan[] | null {
  const settled = [...plans];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = settled.map((plan) => plan.cost);
    for (const rack of racks.keys()) {
      const left = leftFor(rack, settled, items).map((count, item) => Math.min(count, allowed[rack]![item]!));
      const plan = racks[rack]!.own(left);
      const before = settled[rack]!;
      const stays = before.most.every((count, item) => count <= left[item]!);
      // Where time was up the plan found need not be cheaper than the one that already hangs.
      if (plan !== null && !(stays && before.cost <= plan.cost)) settled[rack] = plan;
    }
    if (settled.every((plan, rack) => plan.cost > before[rack]! - 1e-9)) break;
  }
  return hangsAtOnce(settled, items) ? settled : null;
}

const MOST_ROUNDS = 4;

/** What a rack may take while the others keep what they have. */
export function leftFor(rack: number, plans: readonly RackPlan[], items: readonly SharedItem[]): number[] {
  return items.map(({ capacity }, item) =>
    Math.max(
      0,
      plans.reduce((left, plan, other) => (other === rack ? left : left - plan.most[item]!), capacity),
    ),
  );
}

function hangsAtOnce(plans: readonly RackPlan[], items: readonly SharedItem[]): boolean {
  return items.every(
    ({ capacity }, item) => plans.reduce((sum, plan) => sum + plan.most[item]!, 0) <= capacity,
  );
}
