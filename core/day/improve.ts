import { costOf, type RackPlan, type RackPlans } from './rackPlans.ts';
import { leftFor } from './settle.ts';
import type { SharedItem } from './sharedStock.ts';

const EPSILON = 1e-9;

/**
 * Makes an allocation cheaper by moves until none helps: a rack hands one piece to another, or two racks swap pieces;
 * both then hang what is best for them, each exactly over all its sets, from what everybody else leaves.
 */
export function improve(
  plans: readonly RackPlan[],
  racks: readonly RackPlans[],
  items: readonly SharedItem[],
  outOfTime: () => boolean,
): readonly RackPlan[] {
  let best = plans;
  for (;;) {
    const better = firstBetter(best, racks, items, outOfTime);
    if (better === null) return best;
    best = better;
  }
}

function firstBetter(
  plans: readonly RackPlan[],
  racks: readonly RackPlans[],
  items: readonly SharedItem[],
  outOfTime: () => boolean,
): readonly RackPlan[] | null {
  const cost = costOf(plans);
  for (const move of moves(plans, items)) {
    if (outOfTime()) return null;
    const moved = afterMove(plans, move, racks, items);
    if (moved !== null && costOf(moved) < cost - EPSILON) return moved;
  }
  return null;
}

/** One piece goes from one rack to another; `back` comes in return, null for nothing. */
interface Move {
  giver: number;
  taker: number;
  item: number;
  back: number | null;
}

function* moves(plans: readonly RackPlan[], items: readonly SharedItem[]): Generator<Move> {
  for (const [item, { users }] of items.entries()) {
    for (const { rack: giver } of users) {
      if (plans[giver]!.most[item] === 0) continue;
      for (const { rack: taker } of users) {
        if (taker === giver) continue;
        yield { giver, taker, item, back: null };
        for (const [back, other] of items.entries()) {
          const isOffered = back > item && plans[taker]!.most[back]! > 0;
          if (isOffered && other.users.some(({ rack }) => rack === giver)) yield { giver, taker, item, back };
        }
      }
    }
  }
}

function afterMove(
  plans: readonly RackPlan[],
  { giver, taker, item, back }: Move,
  racks: readonly RackPlans[],
  items: readonly SharedItem[],
): RackPlan[] | null {
  const kept = plans[giver]!.most.map(
    (count, one) => count - (one === item ? 1 : 0) + (one === back ? 1 : 0),
  );
  const given = racks[giver]!.own(kept);
  if (given === null) return null;
  const moved = plans.with(giver, given);
  for (const rack of [taker, giver]) {
    const plan = racks[rack]!.own(leftFor(rack, moved, items));
    if (plan === null) return null;
    moved[rack] = plan;
  }
  return moved;
}
