import { anotherProposal } from './anotherProposal.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';
import { nextProposals } from './nextProposals.ts';
import type { PrescribedSetup } from './PrescribedSetup.ts';
import { type Fixed, MOST_SETS, rankSetups } from './rankSetups.ts';
import { type RunnerUp, speaksFor } from './runnersUp.ts';
import type { SearchRules } from './SearchRules.ts';

const RUNNERS_UP = 5;

export interface Prescription {
  best: PrescribedSetup;
  /** The next best sets that are other proposals, each with its own best bar mass and what speaks for it. */
  runnersUp: RunnerUp[];
  /** How many sets were compared, and how many reps had to be simulated for it. */
  setsCompared: number;
  repsSimulated: number;
  proof: {
    /** No set that the stock allows has a misfit below. */
    bound: number;
    /** By how much another set could be better: 0, a tie, or more where a stock was too large to compare every set. */
    gap: number;
    setsLeftOut: number;
  };
}

/**
 * The band and chain set and the loadable bar mass with the least misfit, of everything that the gear allows (model,
 * "day"), and the five next best that are other proposals. Ties go to fewer bands, then fewer chains, then fewer changes from the set
 * that hangs there before.
 */
export function prescribe(
  task: LifterTask,
  gear: RackGear,
  options: { fixed?: Fixed; before?: GearSet; rules?: SearchRules; outOfTime?: () => boolean } = {},
): Prescription {
  const { fixed, rules, before, outOfTime } = options;
  const ranking = rankSetups(task, gear, fixed, rules, { mostSets: MOST_SETS, outOfTime });
  const isAnother = anotherProposal(task.travel, gear);
  const [best, ...others] = nextProposals(
    ranking.fromBest(),
    ranking.sets,
    isAnother,
    [],
    1 + RUNNERS_UP,
    before,
  );
  // The best one is within a tie of the nearest to the aim.
  const nearest = ranking.fromBest()()!.misfit;
  const bound = Math.min(nearest, ranking.leftOut?.from ?? nearest);
  return {
    best: best!,
    runnersUp: others.map((setup) => ({ ...setup, speaksFor: speaksFor(setup, best!, gear) })),
    setsCompared: ranking.sets.length,
    repsSimulated: ranking.reps(),
    proof: { bound, gap: best!.misfit - bound, setsLeftOut: ranking.leftOut?.count ?? 0 },
  };
}
