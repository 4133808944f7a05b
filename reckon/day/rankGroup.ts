import type { Place } from '#contract/records/day.ts';
import type { AllocationLifter } from '#core/day/Allocation.ts';
import { rankLifters } from '#core/day/rankLifters.ts';
import type { SearchRules } from '#core/day/SearchRules.ts';
import type { Found } from './assembleGroup.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import type { AssembledRack } from './assembleRackGear.ts';
import { fixedByCoach } from './fixedByCoach.ts';

/** A lifter whose sets are ranked, or why nothing can be worked out. */
export type RankedPlace =
  | { place: Place; assembled: AssembledPlace; lifter: AllocationLifter }
  | { place: Place; problem: string };

/** Ranks the sets of every lifter of a group; one without any possible set has a problem and leaves the others alone. `onRanking` hears whose turn it is, from 0. */
export function rankGroup(
  found: readonly Found[],
  racks: readonly AssembledRack[],
  rules: SearchRules,
  spent: () => number,
  onRanking: (at: number) => void = () => {},
): RankedPlace[] {
  const ready = found.flatMap((one) => {
    if ('problem' in one) return [];
    const rack = racks.findIndex((assembled) => assembled.rack.id === one.place.rackId);
    const fixed = fixedByCoach(one.place, racks[rack]!.gear);
    return [{ place: one.place, task: one.assembled.task, rack, fixed }];
  });
  const ranked = rankLifters(
    ready,
    racks.map(({ gear }) => gear),
    rules,
    spent,
    onRanking,
  );
  return found.map((one): RankedPlace => {
    if ('problem' in one) return one;
    const at = ready.findIndex(({ place }) => place === one.place);
    const [{ rack, fixed }, result] = [ready[at]!, ranked[at]!];
    if ('ranking' in result)
      return {
        ...one,
        lifter: { rack, ranking: result.ranking, weight: 1, setFixed: fixed.set !== null },
      };
    const problem = `No bar, bands or chains can be worked out for this lifter (${result.reason}): check heights, bests and the group's aim.`;
    return { place: one.place, problem };
  });
}
