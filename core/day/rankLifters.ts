import { allowedGear } from './allowedSets.ts';
import { barsFor } from './bars.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';
import { type Fixed, MOST_SETS, rankSetups, rankThese } from './rankSetups.ts';
import type { SearchRules } from './SearchRules.ts';
import type { SetupRanking } from './SetupRanking.ts';

/** A lifter of a group whose sets are to be ranked. */
export interface LifterToRank {
  task: LifterTask;
  /** Index into the racks. */
  rack: number;
  fixed: Fixed;
}

/** Sets of all lifters together that are scored one by one. */
const MOST_SETS_OF_ALL = 240_000;
/** The ranking may take this share of the time; the rest belongs to the allocation. */
const SHARE_OF_TIME = 0.5;
/** Sets of a large stock that the lifters of one rack choose among, together. */
const POOL = 900;

/** The ranking of one lifter, or why there is none. */
export type Ranked = { ranking: SetupRanking } | { reason: string };

/**
 * Ranks the sets of all lifters of a group within its time: `spent` tells the share of it that is gone, 1 at the end. At a
 * rack whose stock is too large to score every set, all its lifters choose among the best sets of each of them, so that
 * they can share what hangs; what none of the others goes below is told (`leftOut`). A lifter whose values nothing can be
 * reckoned with has a reason instead, and stands in nobody's way. `onRanking` hears before each lifter who is next, from 0.
 */
export function rankLifters(
  lifters: readonly LifterToRank[],
  racks: readonly RackGear[],
  rules: SearchRules,
  spent: () => number,
  onRanking: (at: number) => void = () => {},
): Ranked[] {
  const mostSets = Math.min(MOST_SETS, MOST_SETS_OF_ALL / lifters.length);
  const ranked = lifters.map(({ task, rack, fixed }, at): Ranked => {
    onRanking(at);
    const outOfTime = () => spent() > (SHARE_OF_TIME * (at + 1)) / lifters.length;
    return orReason(() => rankSetups(task, racks[rack]!, fixed, rules, { mostSets, outOfTime }));
  });
  const pools = racks.map((_, rack) =>
    poolOf(
      ranked.flatMap((one, at) => ('ranking' in one && lifters[at]!.rack === rack ? [one.ranking] : [])),
    ),
  );
  return ranked.map((one, at): Ranked => {
    if (!('ranking' in one) || one.ranking.leftOut === undefined) return one;
    const { task, rack, fixed } = lifters[at]!;
    const { ranking } = one;
    return {
      ranking: rankedFromPool(ranking, one.ranking.leftOut, pools[rack]!, task, racks[rack]!, fixed, rules),
    };
  });
}

function orReason(rank: () => SetupRanking): Ranked {
  try {
    const ranking = rank();
    const isUsable = ranking.sets.some((_, index) => Number.isFinite(ranking.lowerBoundOf(index)));
    return isUsable ? { ranking } : { reason: 'no bar, bands or chains have a distance from the aim' };
  } catch (error) {
    if (error instanceof RangeError) return { reason: error.message };
    throw error;
  }
}

/** The best sets of each lifter at a rack, by their bounds; none where nobody needs to choose among them. */
function poolOf(rankings: readonly SetupRanking[]): Map<string, GearSet> {
  const pool = new Map<string, GearSet>();
  if (rankings.every(({ leftOut }) => leftOut === undefined)) return pool;
  for (const { sets, lowerBoundOf } of rankings) {
    const bounds = sets.map((_, index) => lowerBoundOf(index));
    const best = [...sets.keys()].sort((a, b) => bounds[a]! - bounds[b]!);
    for (const index of best.slice(0, Math.ceil(POOL / rankings.length)))
      pool.set(keyOf(sets[index]!), sets[index]!);
  }
  return pool;
}

function rankedFromPool(
  { sets, lowerBoundOf }: SetupRanking,
  { count, from }: NonNullable<SetupRanking['leftOut']>,
  pool: ReadonlyMap<string, GearSet>,
  task: LifterTask,
  gear: RackGear,
  fixed: Fixed,
  rules: SearchRules,
): SetupRanking {
  const [lightestKg] = barsFor(task, gear, fixed, rules);
  const { usable, isAllowed } = allowedGear(gear, task, rules, lightestKg!);
  const common = [...pool.values()].filter(
    (set) => set.hookups.every((index) => usable.includes(index)) && isAllowed(set),
  );
  let least = from;
  sets.forEach((set, index) => {
    if (!pool.has(keyOf(set))) least = Math.min(least, lowerBoundOf(index));
  });
  return {
    ...rankThese(common, task, gear, fixed, rules),
    leftOut: { count: count + sets.length - common.length, from: least },
  };
}

function keyOf({ hookups, chainPairs }: GearSet): string {
  return `${hookups.join()}/${chainPairs.join()}`;
}
