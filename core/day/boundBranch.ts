import { type Branch, contestable, split } from './branch.ts';
import type { RackPlan, RackPlans } from './rackPlans.ts';
import type { SharedItem } from './sharedStock.ts';

/** What the search knows and wants to hear while a branch is bounded. */
export interface Search {
  /** Cost of the cheapest allocation so far. */
  least(): number;
  /** Plans that may be settled into a cheaper one. */
  offer(plans: readonly RackPlan[], charges: Branch['charges']): void;
  outOfTime(): boolean;
}

/** A branch with a cost that none of its allocations goes below. */
export interface Bounded {
  bound: number;
  /** Two branches that cover this one, split at the piece that is contested most. */
  children(): Branch[];
  /** For the branch of all allocations: forgets sets that cannot be in one better than the cheapest found since. */
  forgetHopeless(): void;
}

/** Rounds of pricing for all allocations, and for a branch, which starts from the prices of the whole. */
const ROUNDS = 40;
const BRANCH_ROUNDS = 10;
const OFFER_EVERY = 10;
/** Rounds without a better bound after which steps are halved, and after which the search ends. */
const PATIENCE = 3;
const SHORTEST_STEP = 0.02;
const EPSILON = 1e-9;

/**
 * Prices the contested pieces. With a price for each lifter and piece, and each piece sold to the racks that offer most,
 *
 *   bound = sum over racks (cheapest rotation, prices paid) - sum over pieces (stock sold at its best price)
 *
 * holds for any prices >= 0 (Lagrange); prices rise for lifters who take what was not sold to their rack and fall for
 * those who leave what was, with steps by B. T. Polyak's rule. Null where the branch is empty. Now and then the plans are
 * offered to `offer`, which may find a cheaper allocation.
 */
export function boundBranch(
  branch: Branch,
  racks: readonly RackPlans[],
  items: readonly SharedItem[],
  { least, offer, outOfTime }: Search,
): Bounded | null {
  const needed = items.map((_, item) => contestable(branch, items, item));
  let charges = branch.charges.map((turns) =>
    turns.map((prices) => prices.map((price, item) => (needed[item] ? price : 0))),
  );
  let best: Priced | null = null;
  let step = 1;
  let waited = 0;
  for (let round = 0; round < (branch.whole ? ROUNDS : BRANCH_ROUNDS); round++) {
    const plans: RackPlan[] = [];
    for (const [rack, { cheapest }] of racks.entries()) {
      const plan = cheapest(branch.allowed[rack]!, charges[rack]!);
      if (plan === null) return null;
      plans.push(plan);
    }
    if (round % OFFER_EVERY === 0) offer(plans, charges);
    const { sold, income } = sell(branch, items, charges);
    const bound = plans.reduce((sum, plan) => sum + plan.charged, 0) - income;
    waited++;
    if (best === null || bound > best.bound + EPSILON) {
      best = { bound, plans, charges, sold };
      waited = 0;
      if (branch.whole) forgetHopeless(racks, best, least());
    }
    const slope = plans.map(({ takes }, rack) =>
      takes.map((counts) => counts.map((count, item) => (needed[item] ? count - sold[rack]![item]! : 0))),
    );
    const length = slope.flat(2).reduce((sum, value) => sum + value * value, 0);
    if (length === 0 || best.bound >= least() - EPSILON) break;
    if (waited >= PATIENCE) {
      step /= 2;
      waited = 0;
      charges = best.charges;
    }
    if (step < SHORTEST_STEP || outOfTime()) break;
    const stride = (step * Math.min(1, Math.max(1e-4, least() - bound))) / length;
    charges = charges.map((turns, rack) =>
      turns.map((prices, turn) =>
        prices.map((price, item) => Math.max(0, price + stride * slope[rack]![turn]![item]!)),
      ),
    );
  }
  offer(best!.plans, best!.charges);
  const found = best!;
  return {
    bound: found.bound,
    children: () => split({ ...branch, charges: found.charges }, found.plans, found.sold, items),
    forgetHopeless: () => forgetHopeless(racks, found, least()),
  };
}

interface Priced {
  bound: number;
  plans: readonly RackPlan[];
  charges: Branch['charges'];
  sold: number[][];
}

/** Forgets every set that would raise the bound of all allocations to the cheapest one found. */
function forgetHopeless(racks: readonly RackPlans[], { bound, plans, charges }: Priced, least: number): void {
  racks.forEach(({ forget }, rack) => forget(charges[rack]!, plans[rack]!.charged + least - bound));
}

/** Sells the stock of each piece to the racks that offer most for one, each at most what it may hang. */
function sell(
  { allowed }: Branch,
  items: readonly SharedItem[],
  charges: Branch['charges'],
): { sold: number[][]; income: number } {
  const sold = allowed.map((counts) => counts.map(() => 0));
  let income = 0;
  items.forEach(({ capacity }, item) => {
    const offers = charges.map((turns, rack) => ({
      rack,
      price: turns.reduce((sum, prices) => sum + prices[item]!, 0),
    }));
    offers.sort((a, b) => b.price - a.price || a.rack - b.rack);
    let left = capacity;
    for (const { rack, price } of offers) {
      const count = Math.min(left, allowed[rack]![item]!);
      sold[rack]![item] = count;
      income += count * price;
      left -= count;
    }
  });
  return { sold, income };
}
