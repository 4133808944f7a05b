import type { AllocationInput } from './Allocation.ts';
import { closedWalk, throughBounds, walkMemory } from './closedWalk.ts';
import { type Charges, costTable } from './costTable.ts';
import { handlingWeight, rotationChanges } from './handling.ts';
import { oneSetWalk } from './oneSetWalk.ts';
import type { SetupRanking } from './SetupRanking.ts';
import type { SharedItem } from './sharedStock.ts';

/** From this pull of the slider on, one set for the whole rack is a rule. */
const ONE_SET = 1;
/** More would be simulated for nothing: of a speed day's reps most went into the order of sets that nobody hangs. */
const SCORED_FIRST = 5;
/** Plans without charges that a rack remembers: about as many as one round of moves asks for. */
const MOST_KNOWN = 100;

/** A full rotation at one rack. */
export interface RackPlan {
  /** Misfits, hung pairs, handling and charges: of this plan, or less where the walk was not closed; no plan goes below. */
  charged: number;
  /** What this plan costs without charges. */
  cost: number;
  /** For each turn the index of the set in the lifter's own ranking. */
  sets: number[];
  /** For each turn and item how many are taken, and for each item the most at once. */
  takes: number[][];
  most: number[];
}

/** Finds the cheapest rotation at one rack, whatever is allowed and charged. `allowed`: the most of each item that may hang. */
export interface RackPlans {
  /** Indices into the allocation's lifters, in lifting order. */
  turns: readonly number[];
  /** A rotation whose `charged` no other goes below, found by one walk that need not close. Null where somebody has no allowed set. */
  promising(allowed: readonly number[], charges: Charges): RackPlan | null;
  /** The cheapest rotation, until time is up. Null where somebody has no allowed set. */
  cheapest(allowed: readonly number[], charges: Charges): RackPlan | null;
  /** The same without charges, remembered. */
  own(allowed: readonly number[]): RackPlan | null;
  /** Forgets for good every set of a turn with which no rotation stays below `most` at these charges. */
  forget(allowed: readonly number[], charges: Charges, most: number): void;
}

export function rackPlans(input: AllocationInput, rack: number, items: readonly SharedItem[]): RackPlans {
  const turns = input.lifters.flatMap((lifter, index) => (lifter.rack === rack ? [index] : []));
  const lifters = turns.map((index) => input.lifters[index]!);
  const changeCost = handlingWeight(input.oneSetPull) * input.bandChangeMinutes;
  const free = lifters.flatMap(({ setFixed }, turn) => (setFixed ? [] : [turn]));
  const asOne = input.oneSetPull >= ONE_SET && free.length > 1;
  for (const { ranking } of lifters) scoreBest(ranking, input.outOfTime);
  const table = costTable(lifters, rack, items);
  const { hookups, chains } = input.racks[rack]!;
  const memory = walkMemory(hookups.length, chains.length, table.size, turns.length);
  const noCharges = turns.map(() => items.map(() => 0));
  const known: { allowed: readonly number[]; plan: RackPlan | null }[] = [];

  const find = (allowed: readonly number[], charges: Charges, isEnough: () => boolean): RackPlan | null => {
    const part = table.part(allowed);
    for (;;) {
      const costs = table.charged(part, charges);
      const walk = asOne
        ? oneSetWalk(part.lattice, costs, changeCost, free)
        : closedWalk(part.lattice, costs, changeCost, isEnough, memory);
      if (walk === null) return null;
      const sets = walk.sets.map((set) => part.from[set]!);
      const changed = sets.map((set, turn) => table.score(turn, set)).includes(true);
      // When time is up the walk's cost by bounds is still what no rotation goes below.
      if (!changed || input.outOfTime()) return planOf(walk.cost, sets);
    }
  };

  return {
    turns,
    promising: (allowed, charges) => find(allowed, charges, () => true),
    cheapest: (allowed, charges) => find(allowed, charges, input.outOfTime),
    own(allowed) {
      // A plan for more than is allowed that takes no more than that is the plan; the newest are the likeliest.
      const same = known.find(
        (one) => isWithin(allowed, one.allowed) && (one.plan === null || isWithin(one.plan.most, allowed)),
      );
      if (same) return same.plan;
      const plan = find(allowed, noCharges, input.outOfTime);
      known.unshift({ allowed: [...allowed], plan });
      if (known.length > MOST_KNOWN) known.pop();
      return plan;
    },
    forget(allowed, charges, most) {
      // Sets that all must take together are judged together by the walk itself.
      if (asOne || turns.length === 0) return;
      const part = table.part(allowed);
      const bounds = throughBounds(part.lattice, table.charged(part, charges), changeCost, memory);
      bounds.forEach((bound, turn) => {
        table.forget(
          turn,
          [...bound.keys()].filter((at) => bound[at]! >= most).map((at) => part.from[at]!),
        );
      });
    },
  };

  function planOf(charged: number, sets: readonly number[]): RackPlan {
    const takes = sets.map((set) => {
      const counts = items.map(() => 0);
      for (const { item, count } of table.takes(set)) counts[item] = count;
      return counts;
    });
    const own = sets.reduce((sum, set, turn) => sum + table.cost(turn, set), 0);
    return {
      charged,
      cost: own + changeCost * rotationChanges(sets.map(table.setAt)),
      sets: sets.map((set, turn) => table.ownSet(turn, set)),
      takes,
      most: items.map((_, item) => Math.max(0, ...takes.map((counts) => counts[item]!))),
    };
  }
}

/** What plans cost together, without charges. */
export function costOf(plans: readonly RackPlan[]): number {
  return plans.reduce((sum, plan) => sum + plan.cost, 0);
}

/** Item by item; a loop of its own, since plans are looked up more often than made. */
function isWithin(counts: readonly number[], most: readonly number[]): boolean {
  for (let item = 0; item < counts.length; item++) if (counts[item]! > most[item]!) return false;
  return true;
}

/**
 * Scores the best sets in order of misfit, which lifts the bounds of all others to the last of them: without it the
 * walk would ask for one optimistic set after another.
 */
function scoreBest(ranking: SetupRanking, outOfTime: () => boolean): void {
  const next = ranking.fromBest();
  for (let count = 0; count < SCORED_FIRST && !outOfTime(); count++) next();
}
