import type { AllocationInput } from './Allocation.ts';
import { closedWalk, throughBounds, type Walk } from './closedWalk.ts';
import { type Charges, costTable } from './costTable.ts';
import { handlingWeight, rotationChanges } from './handling.ts';
import { oneSetWalk } from './oneSetWalk.ts';
import type { SetupRanking } from './SetupRanking.ts';
import type { SharedItem } from './sharedStock.ts';

/** From this pull of the slider on, one set for the whole rack is a rule. */
const ONE_SET = 1;
const FREE = Number.POSITIVE_INFINITY;
/** Tables are made anew only when at least a tenth of the sets can be forgotten. */
const WORTH_REBUILDING = 0.9;
const SCORED_FIRST = 60;

/** A full rotation at one rack. */
export interface RackPlan {
  /** Misfits, hung pairs, handling and charges: of this plan, or less where time was up; no plan goes below. */
  charged: number;
  /** What this plan costs without charges. */
  cost: number;
  /** For each turn the index of the set in the lifter's own ranking. */
  sets: number[];
  /** For each turn and item how many are taken, and for each item the most at once. */
  takes: number[][];
  most: number[];
}

/** Finds the cheapest rotation at one rack, whatever is allowed and charged. */
export interface RackPlans {
  /** Indices into the allocation's lifters, in lifting order. */
  turns: readonly number[];
  /** `allowed`: the most of each item that may hang. Null where somebody has no allowed set. */
  cheapest(allowed: readonly number[], charges: Charges): RackPlan | null;
  /** Forgets for good every set of a turn with which no rotation stays below `most` at these charges. */
  forget(charges: Charges, most: number): void;
}

export function rackPlans(input: AllocationInput, rack: number, items: readonly SharedItem[]): RackPlans {
  const turns = input.lifters.flatMap((lifter, index) => (lifter.rack === rack ? [index] : []));
  const lifters = turns.map((index) => input.lifters[index]!);
  const changeCost = handlingWeight(input.oneSetPull) * input.bandChangeMinutes;
  const free = lifters.flatMap(({ setFixed }, turn) => (setFixed ? [] : [turn]));
  const asOne = input.oneSetPull >= ONE_SET && free.length > 1;
  for (const { ranking } of lifters) scoreBest(ranking);
  const everything = items.map(() => FREE);
  let table = costTable(
    lifters,
    lifters.map(({ ranking }) => [...ranking.sets.keys()]),
    rack,
    items,
  );

  let listed = lifters.reduce((sum, { ranking }) => sum + ranking.sets.length, 0);

  return {
    turns,
    cheapest(allowed, charges) {
      for (;;) {
        const costs = table.charged(allowed, charges);
        const walk = asOne
          ? oneSetWalk(table.lattice, costs, changeCost, free)
          : closedWalk(table.lattice, costs, changeCost, input.outOfTime);
        if (walk === null) return null;
        if (!walk.sets.map((set, turn) => table.score(turn, set)).includes(true)) return planOf(walk);
      }
    },
    forget(charges, most) {
      // Sets that all must take together are judged together by the walk itself.
      if (asOne || turns.length === 0) return;
      const costs = table.charged(everything, charges);
      const bounds = throughBounds(table.lattice, costs, changeCost);
      const kept = bounds.map((bound, turn) =>
        table
          .ownSets(turn)
          .filter(({ at }) => bound[at]! < most)
          .map(({ own }) => own),
      );
      const left = kept.reduce((sum, sets) => sum + sets.length, 0);
      if (left > WORTH_REBUILDING * listed) return;
      table = costTable(lifters, kept, rack, items);
      listed = left;
    },
  };

  function planOf({ cost, sets }: Walk): RackPlan {
    const takes = sets.map((set) =>
      items.map((_, item) => table.takes(set).find((one) => one.item === item)?.count ?? 0),
    );
    const own = sets.reduce((sum, set, turn) => sum + table.cost(turn, set), 0);
    return {
      charged: cost,
      cost: own + changeCost * rotationChanges(sets.map((set) => table.lattice.sets[set]!)),
      sets: sets.map((set, turn) => table.ownSet(turn, set)),
      takes,
      most: items.map((_, item) => Math.max(0, ...takes.map((counts) => counts[item]!))),
    };
  }
}

/**
 * Scores the best sets in order of misfit, which lifts the bounds of all others to the last of them: without it the
 * walk would ask for one optimistic set after another.
 */
function scoreBest(ranking: SetupRanking): void {
  for (let count = 0; count < SCORED_FIRST; count++) ranking.next();
}
