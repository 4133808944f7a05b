import type { AllocationInput, AllocationLifter } from './Allocation.ts';
import type { GearSet } from './Gear.ts';

/** Lifters who must take the same set: one alone, or all free ones of a rack when the coach wants one set for it. */
export interface Team {
  rack: number;
  /** Indices into `AllocationInput.lifters`. */
  lifters: readonly number[];
  sets: readonly GearSet[];
  /** Weighted sum of the members' misfits with this set; `lowerBound` without simulating reps. */
  misfit(set: number): number;
  lowerBound(set: number): number;
  /** A short list of good sets, the bare bar always among them where it is allowed. */
  firstSets(count: number): number[];
}

/** From this pull of the slider on, one set for the whole rack is a rule. */
const ONE_SET = 1;

export function teamsOf({
  racks,
  lifters,
  oneSetPull,
}: Pick<AllocationInput, 'racks' | 'lifters' | 'oneSetPull'>): Team[] {
  const alone = (index: number) => team(lifters, [index]);
  if (oneSetPull < ONE_SET) return lifters.map((_, index) => alone(index));
  return racks.flatMap((_, rack) => {
    const here = lifters.flatMap((lifter, index) => (lifter.rack === rack ? [index] : []));
    const free = here.filter((index) => !lifters[index]!.setFixed);
    const fixed = here.filter((index) => lifters[index]!.setFixed);
    return [...(free.length > 0 ? [team(lifters, free)] : []), ...fixed.map(alone)];
  });
}

function team(all: readonly AllocationLifter[], members: readonly number[]): Team {
  const lifters = members.map((index) => all[index]!);
  const { rack, ranking } = lifters[0]!;
  return {
    rack,
    lifters: members,
    sets: ranking.sets,
    misfit: (set) =>
      lifters.reduce((sum, { weight, ranking }) => sum + weight * ranking.scoreOf(set).misfit, 0),
    lowerBound: (set) =>
      lifters.reduce((sum, { weight, ranking }) => sum + weight * ranking.lowerBoundOf(set), 0),
    firstSets(count) {
      const best = lifters.flatMap(({ ranking }) => {
        const found: number[] = [];
        for (let score = ranking.next(); score !== null && found.length < count; score = ranking.next())
          found.push(score.index);
        return found;
      });
      return [...new Set([0, ...best])];
    },
  };
}

/** Turns of a full rotation at each rack at which one team follows another. */
export function neighbourTurns(
  { racks, lifters }: Pick<AllocationInput, 'racks' | 'lifters'>,
  teams: readonly Team[],
): { before: number; after: number }[] {
  return racks.flatMap((_, rack) => {
    const order = lifters.flatMap((lifter, index) =>
      lifter.rack === rack ? [teams.findIndex((team) => team.lifters.includes(index))] : [],
    );
    return order
      .map((before, i) => ({ before, after: order[(i + 1) % order.length]! }))
      .filter(({ before, after }) => before !== after);
  });
}
