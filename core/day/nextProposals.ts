import type { IsAnother } from './anotherProposal.ts';
import type { GearSet } from './Gear.ts';
import type { PrescribedSetup } from './PrescribedSetup.ts';
import type { SetupScore } from './SetupRanking.ts';
import { setChanges } from './setChanges.ts';

/** Misfits that differ by less than this are a tie (half a tenth of a point): below what any band is known to. */
export const TIE = 0.0005;
/** Other proposals are looked for among so many of the best sets: further down they are no proposals any more. */
const MOST_LOOKED_AT = 300;

/**
 * The next best setups of a ranking of `sets`, `next` giving the best first, at most `most`, each another proposal than those that are `known` and than the others, as `isAnother` tells.
 * Ties go to fewer bands, then fewer chains, then fewer changes from the set `before` where one hangs.
 */
export function nextProposals(
  next: () => SetupScore | null,
  sets: readonly GearSet[],
  isAnother: IsAnother,
  known: readonly PrescribedSetup[],
  most: number,
  before?: GearSet,
): PrescribedSetup[] {
  const rank = ({ set }: PrescribedSetup) => [
    set.hookups.length,
    set.chainPairs.reduce((sum, pairs) => sum + pairs, 0),
    before === undefined ? 0 : setChanges(before, set),
  ];
  const found: PrescribedSetup[] = [];
  const nextTied = tiedOnes(next, sets);
  for (let tied = nextTied(); tied.length > 0 && found.length < most; tied = nextTied()) {
    tied.sort((a, b) => apart(rank(a), rank(b)));
    for (const setup of tied)
      if (found.length < most && [...known, ...found].every((other) => isAnother(setup, other)))
        found.push(setup);
  }
  return found;
}

/** Gives the best sets in order of misfit, each time the next one with all that tie with it; none after the last. */
function tiedOnes(next: () => SetupScore | null, sets: readonly GearSet[]): () => PrescribedSetup[] {
  let looked = 0;
  const take = (): PrescribedSetup | null => {
    const score = looked++ < MOST_LOOKED_AT ? next() : null;
    return score && { set: sets[score.index]!, barKg: score.barKg, misfit: score.misfit };
  };
  let ahead = take();
  return () => {
    const tied: PrescribedSetup[] = [];
    for (; ahead !== null && ahead.misfit <= (tied[0]?.misfit ?? ahead.misfit) + TIE; ahead = take())
      tied.push(ahead);
    return tied;
  };
}

/** By how much the first figure differs that does; below 0: `a` comes before `b`. */
function apart(a: readonly number[], b: readonly number[]): number {
  return a.map((value, i) => value - b[i]!).find((difference) => difference !== 0) ?? 0;
}
