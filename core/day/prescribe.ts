import type { GearSet, RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';
import type { PrescribedSetup } from './PrescribedSetup.ts';
import { type Fixed, MOST_SETS, rankSetups } from './rankSetups.ts';
import { isAnother, type SpeaksFor, speaksFor } from './runnersUp.ts';
import type { SearchRules } from './SearchRules.ts';
import type { SetupRanking } from './SetupRanking.ts';
import { setChanges } from './setChanges.ts';

/** Misfits that differ by less than this are a tie (half a tenth of a point): below what any band is known to. */
export const TIE = 0.0005;
const RUNNERS_UP = 5;
/** Other proposals are looked for among so many of the best sets: further down they are no proposals any more. */
const MOST_LOOKED_AT = 300;

export interface Prescription {
  best: PrescribedSetup;
  /** The next best sets that are other proposals, each with its own best bar mass and what speaks for it. */
  runnersUp: (PrescribedSetup & { speaksFor: SpeaksFor[] })[];
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
  const { fixed, rules, outOfTime } = options;
  const ranking = rankSetups(task, gear, fixed, rules, { mostSets: MOST_SETS, outOfTime });
  const rank = ({ set }: PrescribedSetup) => [
    set.hookups.length,
    set.chainPairs.reduce((sum, pairs) => sum + pairs, 0),
    options.before === undefined ? 0 : setChanges(options.before, set),
  ];
  const chosen: PrescribedSetup[] = [];
  const nextTied = tiedOnes(ranking);
  let nearest: number | null = null;
  for (let tied = nextTied(); tied.length > 0 && chosen.length <= RUNNERS_UP; tied = nextTied()) {
    nearest ??= tied[0]!.misfit;
    tied.sort((a, b) => (comesBefore(rank(a), rank(b)) ? -1 : comesBefore(rank(b), rank(a)) ? 1 : 0));
    for (const setup of tied)
      if (chosen.length <= RUNNERS_UP && chosen.every(({ set }) => isAnother(set, setup.set)))
        chosen.push(setup);
  }
  const [best, ...others] = chosen;
  const bound = Math.min(nearest!, ranking.leftOut?.from ?? nearest!);
  return {
    best: best!,
    runnersUp: others.map((setup) => ({ ...setup, speaksFor: speaksFor(setup, best!, gear) })),
    setsCompared: ranking.sets.length,
    repsSimulated: ranking.reps(),
    proof: { bound, gap: best!.misfit - bound, setsLeftOut: ranking.leftOut?.count ?? 0 },
  };
}

/** Gives the best sets in order of misfit, each time the next one with all that tie with it; none after the last. */
function tiedOnes(ranking: SetupRanking): () => PrescribedSetup[] {
  let looked = 0;
  const take = (): PrescribedSetup | null => {
    const score = looked++ < MOST_LOOKED_AT ? ranking.next() : null;
    return score && { set: ranking.sets[score.index]!, barKg: score.barKg, misfit: score.misfit };
  };
  let ahead = take();
  return () => {
    const tied: PrescribedSetup[] = [];
    for (; ahead !== null && ahead.misfit <= (tied[0]?.misfit ?? ahead.misfit) + TIE; ahead = take())
      tied.push(ahead);
    return tied;
  };
}

function comesBefore(a: readonly number[], b: readonly number[]): boolean {
  const differs = a.findIndex((value, i) => value !== b[i]);
  return differs >= 0 && a[differs]! < b[differs]!;
}
