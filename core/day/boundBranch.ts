import { type Branch, contestable, split } from './branch.ts';
import type { Charges } from './costTable.ts';
import type { RackPlan, RackPlans } from './rackPlans.ts';
import { sell, tightened } from './sale.ts';
import type { SharedItem } from './sharedStock.ts';

/** What the search knows and wants to hear while a branch is bounded. */
export interface Search {
  /** Cost of the cheapest allocation so far. */
  least(): number;
  /** Plans that may be settled into a cheaper one. */
  offer(plans: readonly RackPlan[]): void;
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
const ROUNDS = 60;
const BRANCH_ROUNDS = 3;
const OFFER_EVERY = 10;
const TIGHTEN_EVERY = 5;
/** Rounds without a better bound after which steps are halved, and after which the search ends. */
const PATIENCE = 3;
const SHORTEST_STEP = 0.02;
/** How much of the last direction a step keeps: prices that swing to and fro settle sooner. */
const MOMENTUM = 0.5;
const EPSILON = 1e-9;

/**
 * Prices the contested pieces. With a price for each lifter and piece, and each piece sold to the racks that offer most,
 *
 *   bound = sum over racks (cheapest rotation, prices paid) - sum over pieces (stock sold at its best price)
 *
 * holds for any prices >= 0 (Lagrange); prices rise for lifters who take what was not sold to their rack and fall for
 * those who leave what was, with steps by B. T. Polyak's rule, which keep a part of the last one's direction. Rotations
 * need not close while prices move, only where no piece is contested any more. Now and then racks that offer too little
 * for a piece are told to go without (`tightened`). Null where the branch is empty. Now and then the plans are offered to
 * `offer`, which may find a cheaper allocation.
 */
export function boundBranch(
  branch: Branch,
  racks: readonly RackPlans[],
  items: readonly SharedItem[],
  { least, offer, outOfTime }: Search,
): Bounded | null {
  let allowed = branch.allowed;
  let charges = branch.charges;
  let best: Priced | null = null;
  let step = 1;
  let waited = 0;
  let direction: number[][][] | null = null;
  for (let round = 0; round < (branch.whole ? ROUNDS : BRANCH_ROUNDS); round++) {
    const needed = items.map((_, item) => contestable({ allowed }, items, item));
    charges = charges.map((turns) =>
      turns.map((prices) => prices.map((price, item) => (needed[item] ? price : 0))),
    );
    const isLeaf = !needed.includes(true);
    const plans = plansOf(racks, isLeaf ? 'cheapest' : 'promising', allowed, charges);
    if (plans === null) return null;
    if (isLeaf || (branch.whole && round % OFFER_EVERY === 0)) offer(plans);
    const sale = sell(allowed, items, charges);
    const bound = boundOf(plans, sale.income);
    waited++;
    if (best === null || bound > best.bound + EPSILON) {
      best = { bound, plans, charges, allowed };
      waited = 0;
    }
    if (round % TIGHTEN_EVERY === TIGHTEN_EVERY - 1) {
      if (branch.whole) forgetHopeless(racks, best, least());
      allowed = tightened(best, items, least());
    }
    const slope = plans.map(({ takes }, rack) =>
      takes.map((counts) =>
        counts.map((count, item) => (needed[item] ? count - sale.sold[rack]![item]! : 0)),
      ),
    );
    if (isLeaf || best.bound >= least() - EPSILON) break;
    if (waited >= PATIENCE) {
      step /= 2;
      waited = 0;
      charges = best.charges;
      direction = null;
    }
    if (step < SHORTEST_STEP || outOfTime()) break;
    const before: number[][][] | null = direction;
    direction = slope.map((turns, rack) =>
      turns.map((values, turn) =>
        values.map((value, item) => value + MOMENTUM * (before?.[rack]![turn]![item] ?? 0)),
      ),
    );
    const length = direction.flat(2).reduce((sum, value) => sum + value * value, 0);
    // Plans that agree with the sale move no price; only their walks may still have to close.
    const stride = length === 0 ? 0 : (step * Math.min(1, Math.max(1e-4, least() - bound))) / length;
    const onwards = direction;
    charges = charges.map((turns, rack) =>
      turns.map((prices, turn) =>
        prices.map((price, item) => Math.max(0, price + stride * onwards[rack]![turn]![item]!)),
      ),
    );
  }
  const found = branch.whole || best!.bound >= least() - EPSILON ? best! : closed(best!, racks, items);
  // What is settled of these plans stays in the branch and costs no less than its bound.
  if (found.bound < least() - EPSILON) offer(found.plans);
  return {
    bound: found.bound,
    children: () =>
      split(
        { ...branch, allowed: tightened(found, items, least()), charges: found.charges },
        found.plans,
        items,
      ),
    forgetHopeless: () => forgetHopeless(racks, found, least()),
  };
}

/**
 * The same prices with every rotation closed. Where changes cost much, walks that need not end where they began promise what no price
 * makes good; in a branch that asks for few sets closing them costs less than opening it.
 */
function closed(found: Priced, racks: readonly RackPlans[], items: readonly SharedItem[]): Priced {
  const { allowed, charges } = found;
  const plans = found.plans.map((plan, rack) =>
    isClosed(plan, charges[rack]!) ? plan : (racks[rack]!.cheapest(allowed[rack]!, charges[rack]!) ?? plan),
  );
  return { ...found, plans, bound: boundOf(plans, sell(allowed, items, charges).income) };
}

/** Whether a plan costs what its walk promised. */
function isClosed({ charged, cost, takes }: RackPlan, charges: Charges): boolean {
  const paid = takes.reduce(
    (sum, counts, turn) =>
      sum + counts.reduce((part, count, item) => part + count * charges[turn]![item]!, 0),
    0,
  );
  return charged > cost + paid - EPSILON;
}

function boundOf(plans: readonly RackPlan[], income: number): number {
  return plans.reduce((sum, plan) => sum + plan.charged, 0) - income;
}

interface Priced {
  bound: number;
  plans: readonly RackPlan[];
  charges: Branch['charges'];
  allowed: number[][];
}

/** A plan for each rack at these prices; null where somebody has no allowed set. */
function plansOf(
  racks: readonly RackPlans[],
  how: 'cheapest' | 'promising',
  allowed: Branch['allowed'],
  charges: Branch['charges'],
): RackPlan[] | null {
  const plans: RackPlan[] = [];
  for (const [rack, find] of racks.entries()) {
    const plan = find[how](allowed[rack]!, charges[rack]!);
    if (plan === null) return null;
    plans.push(plan);
  }
  return plans;
}

/** Forgets every set that would raise the bound of all allocations to the cheapest one found. */
function forgetHopeless(
  racks: readonly RackPlans[],
  { bound, plans, charges, allowed }: Priced,
  least: number,
): void {
  racks.forEach(({ forget }, rack) =>
    forget(allowed[rack]!, charges[rack]!, plans[rack]!.charged + least - bound),
  );
}
