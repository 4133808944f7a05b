import type { EffortGroup, Session } from './sessions.ts';

/** Reps left at the top of a work-up that ended without a miss, and their standard deviation (judgement, common practice). */
export const LEFT_REPS = 1.5;
export const LEFT_SD_REPS = 1.5;
/** A lifter who stops early does so every time: all tops together count as no more than so many. */
const WORTH = 6;
/** Sets of one equipment of which more than this share tells more are taken at their word alone. */
const TOLD_SHARE = 0.05;
/** A work-up of singles is of few reps. */
const MOST_REPS = 3;

/**
 * Reps left at the top of a work-up of several reps: one to four as a rule (common practice, no source; who is not told otherwise leaves
 * more: Barbosa-Netto et al. 2021, J Strength Cond Res 35:S166), of which the lower side is taken, since a lifter must not be
 * thought stronger for saying nothing; and their standard deviation as ln strength, about two reps. All of these together count as one answer.
 */
export const KEPT_REPS = 1.5;
export const KEPT_SD_LN = 0.05;
const KEPT_WORTH = 1;
/** Beyond so many reps it is not strength that ends a set. */
const MOST_OF_SEVERAL = 10;

/**
 * Sets with neither speeds nor reps left say "at least" all the time, and hardly ever "less than": nothing keeps the
 * estimate from above. But a work-up, made sets of few reps that rise in one setup, ends near what the day allows. So where
 * the sets in one equipment tell no more, and only there, the heaviest set of each work-up is read as one with about one
 * and a half reps left, roughly and for all of them together no more surely than six answers; the heaviest of several reps, told in ln strength
 * and not in reps, as one that leaves what people are used to leave. Writes into the groups.
 */
export function readWorkUps(sessions: readonly Session[]): void {
  const groups = sessions.flatMap((session) => session.groups);
  const tops = sessions.flatMap(topsOf);
  for (const equipment of new Set(tops.map((top) => top.equipment))) {
    const worn = groups.filter((group) => group.equipment === equipment);
    if (worn.filter(tellsMore).length > TOLD_SHARE * worn.length) continue;
    const silent = tops.filter((top) => top.equipment === equipment && !tellsMore(top));
    const [several, few] = [silent.filter(isOfSeveral), silent.filter((top) => !isOfSeveral(top))];
    for (const top of few) top.topShare = Math.min(1, WORTH / few.length);
    for (const top of several) top.topShare = Math.min(1, KEPT_WORTH / several.length);
  }
}

/** Whether a work-up that ends here is read as one of several reps. */
export function isOfSeveral({ made }: EffortGroup): boolean {
  return made > MOST_REPS;
}

/** Whether somebody said or measured how hard these sets were. */
export function tellsMore({ fastestMps, peakMps, reserve }: EffortGroup): boolean {
  return fastestMps.count + peakMps.count + reserve.count > 0;
}

/** The last of at least two made groups that rise in one rigging, where no miss came after. */
function topsOf({ groups }: Session): EffortGroup[] {
  const heavy = groups.filter(({ made }) => made <= MOST_OF_SEVERAL);
  return heavy.filter((group) => {
    const same = heavy.filter((other) => alike(group, other));
    const lighter = same.some(({ model, missed }) => !missed && model.lnTotal < group.model.lnTotal);
    const heavier = same.some(({ model }) => model.lnTotal > group.model.lnTotal);
    return lighter && !heavier && same.every(({ missed }) => !missed);
  });
}

function alike(a: EffortGroup, b: EffortGroup): boolean {
  return (
    isOfSeveral(a) === isOfSeveral(b) &&
    a.rigging === b.rigging &&
    a.equipment === b.equipment &&
    a.platform === b.platform
  );
}
