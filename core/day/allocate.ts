import { minHeap } from '#core/numeric/minHeap.ts';
import type { Allocation, AllocationInput } from './Allocation.ts';
import { type Bounded, boundBranch } from './boundBranch.ts';
import { type Branch, wholeBranch } from './branch.ts';
import { HUNG_PAIR } from './costTable.ts';
import { handlingWeight, rotationChanges } from './handling.ts';
import { improve } from './improve.ts';
import { TIE } from './nextProposals.ts';
import { costOf, type RackPlan, type RackPlans, rackPlans } from './rackPlans.ts';
import { settle } from './settle.ts';
import { type SharedItem, sharedStock } from './sharedStock.ts';

/** Costs closer than this are equal: rounding of sums. */
const EPSILON = 1e-9;

/**
 * Hangs bands and chains at several racks at once so that nobody needs a pair that hangs elsewhere, and
 * `sum(weight misfit) + handling` is least (model, "day").
 *
 * Branch and bound. Each rack alone is solved exactly over all its sets (`closedWalk`); racks only compete for what
 * they share. Prices on the shared pieces turn the competition into a bound (`boundBranch`), and where racks still want
 * the same piece two branches are opened: one rack goes without, or the others do. The least bound of what is open is a
 * proof: no allocation costs less.
 */
export function allocate(input: AllocationInput): Allocation {
  const stock = sharedStock(input);
  // What the coach's own choices hang twice stays hung twice and is reported; nobody else gets it.
  const items = stock.filter(({ users }) => users.length > 1);
  const racks = input.racks.map((_, rack) => rackPlans(input, rack, items));
  const open = minHeap();
  const branches: Bounded[] = [];
  let best: readonly RackPlan[] | null = null;
  let least = Number.POSITIVE_INFINITY;
  const offer = (plans: readonly RackPlan[]) => {
    const cost = costOf(plans);
    if (cost >= least - EPSILON) return;
    [best, least] = [plans, cost];
    branches[0]?.forgetHopeless();
  };
  const look = (branch: Branch) => {
    const bounded = boundBranch(branch, racks, items, {
      least: () => least,
      offer(plans) {
        const settled = settle(plans, branch.allowed, racks, items);
        if (settled === null) return;
        if (branch.whole || costOf(settled) < least - EPSILON)
          offer(improve(settled, racks, items, input.outOfTime));
      },
      outOfTime: input.outOfTime,
    });
    if (bounded !== null && bounded.bound < least - EPSILON)
      open.push(branches.push(bounded) - 1, bounded.bound);
  };
  look(wholeBranch(racks, items));
  let bound = Number.POSITIVE_INFINITY;
  for (let next = open.pop(); next !== null; next = open.pop()) {
    if (next.key >= least - EPSILON) break;
    if (input.outOfTime()) {
      // A branch that time cut short may have no children and still hold something cheaper.
      bound = Math.min(bound, next.key);
      if (best !== null) break;
    }
    for (const branch of branches[next.index]!.children()) look(branch);
  }
  if (best === null) throw new RangeError('no sets exist that all lifters could hang at once');
  return describe(input, racks, best, stock, Math.min(bound, least));
}

function describe(
  input: AllocationInput,
  racks: readonly RackPlans[],
  plans: readonly RackPlan[],
  stock: readonly SharedItem[],
  bound: number,
): Allocation {
  const setOf = new Map(
    racks.flatMap(({ turns }, rack) =>
      turns.map((lifter, turn) => [lifter, plans[rack]!.sets[turn]!] as const),
    ),
  );
  const chosen = input.lifters.map(({ ranking }, lifter) => {
    const { index, barKg, misfit } = ranking.scoreOf(setOf.get(lifter)!);
    return { set: ranking.sets[index]!, barKg, misfit };
  });
  const handled = racks.map(({ turns }) => {
    const changes = rotationChanges(turns.map((lifter) => chosen[lifter]!.set));
    return { changes, handlingMinutes: changes * input.bandChangeMinutes };
  });
  const misfit = chosen.reduce((sum, setup, lifter) => sum + input.lifters[lifter]!.weight * setup.misfit, 0);
  const minutes = handled.reduce((sum, rack) => sum + rack.handlingMinutes, 0);
  const hung = chosen.reduce((sum, { set }) => sum + set.hookups.length, 0);
  const total = misfit + handlingWeight(input.oneSetPull) * minutes + HUNG_PAIR * hung;
  const proven = Math.min(bound, leftOutBound(input.lifters), total);
  const gap = total - proven;
  return {
    chosen,
    misfit,
    racks: handled,
    total,
    proof: {
      status: gap <= TIE ? 'optimal' : 'timeLimit',
      bound: proven,
      gap,
      setsLeftOut: input.lifters.reduce((sum, { ranking }) => sum + (ranking.leftOut?.count ?? 0), 0),
    },
    clashes: stock.filter(({ clash }) => clash).map(({ id, sort }) => ({ id, sort })),
  };
}

/** What no allocation goes below in which somebody has a set that was left out of a large stock: all others at their best. */
function leftOutBound(lifters: AllocationInput['lifters']): number {
  const best = lifters.map(({ ranking, weight }) => {
    const listed = ranking.sets.reduce(
      (least, _, index) => Math.min(least, ranking.lowerBoundOf(index)),
      Number.POSITIVE_INFINITY,
    );
    return weight * Math.min(listed, ranking.leftOut?.from ?? listed);
  });
  const sum = best.reduce((total, least) => total + least, 0);
  return lifters.reduce(
    (least, { ranking, weight }, at) =>
      ranking.leftOut === undefined
        ? least
        : Math.min(least, sum - best[at]! + weight * ranking.leftOut.from),
    Number.POSITIVE_INFINITY,
  );
}
