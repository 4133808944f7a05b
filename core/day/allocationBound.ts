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

/**
 * Prices the contested pieces. With a price for each lifter and piece, and each piece sold to the racks that offer most,
 *
 *   bound = sum over racks (cheapest rotation, prices paid) - sum over pieces (stock sold at its best price)
 *
 * holds for any prices >= 0 (Lagrange); prices rise for lifters who take what was not sold to their rack and fall for
 * those who leave what was, with steps by B. T. Polyak's rule. Null where the branch is empty. Every bound's plans are
 * offered to `offer`, which may find a cheaper allocation.
 */
export function boundBranch(
  branch: Branch,
  racks: readonly RackPlans[],
  items: readonly SharedItem[],
  { least, offer, outOfTime }: Search,
): Bounded | null {
  let charges = freeOfNeedless(branch, items);
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
      takes.map((counts) =>
        counts.map((count, item) => (contestable(branch, items, item) ? count - sold[rack]![item]! : 0)),
      ),
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

/** A piece is contestable while the racks together may hang more of it than there is. */
function contestable({ allowed }: Branch, items: readonly SharedItem[], item: number): boolean {
  return allowed.reduce((sum, counts) => sum + counts[item]!, 0) > items[item]!.capacity;
}

function freeOfNeedless(branch: Branch, items: readonly SharedItem[]): Branch['charges'] {
  const needed = items.map((_, item) => contestable(branch, items, item));
  return branch.charges.map((turns) =>
    turns.map((prices) => prices.map((price, item) => (needed[item] ? price : 0))),
  );
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

/**
 * Splits at the piece that is wanted most beyond its stock, else at the one whose price the plans and the sale disagree
 * on most: either the rack that takes most of it hangs less, or the others leave that much to it.
 */
function split(
  branch: Branch,
  plans: readonly RackPlan[],
  sold: readonly (readonly number[])[],
  items: readonly SharedItem[],
): Branch[] {
  const open = [...items.keys()].filter((item) => contestable(branch, items, item));
  const excess = (item: number) =>
    plans.reduce((sum, plan) => sum + plan.most[item]!, 0) - items[item]!.capacity;
  const disagreement = (item: number) =>
    branch.charges.reduce(
      (sum, turns, rack) =>
        sum +
        turns.reduce(
          (part, prices, turn) =>
            part + prices[item]! * Math.abs(sold[rack]![item]! - plans[rack]!.takes[turn]![item]!),
          0,
        ),
      0,
    );
  open.sort((a, b) => excess(b) - excess(a) || disagreement(b) - disagreement(a) || a - b);
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
