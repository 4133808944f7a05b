import type { GearSet, RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';
import { type Fixed, rankSetups } from './rankSetups.ts';
import type { SearchRules } from './SearchRules.ts';
import type { SetupRanking } from './SetupRanking.ts';
import { setChanges } from './setChanges.ts';

/** Misfits that differ by less than this are a tie (half a tenth of a point): below what any band is known to. */
export const TIE = 0.0005;
const RUNNERS_UP = 5;

export interface PrescribedSetup {
  set: GearSet;
  barKg: number;
  misfit: number;
}

export interface Prescription {
  best: PrescribedSetup;
  /** The next best sets, each with its own best bar mass. */
  runnersUp: PrescribedSetup[];
  /** How many sets were compared, and how many reps had to be simulated for it. */
  setsCompared: number;
  repsSimulated: number;
}

/**
 * The band and chain set and the loadable bar mass with the least misfit, of everything that the gear allows (model,
 * "prescribing"), and the five next best. Ties go to fewer bands, then fewer chains, then fewer changes from the set
 * that hangs there before.
 */
export function prescribe(
  task: LifterTask,
  gear: RackGear,
  options: { fixed?: Fixed; before?: GearSet; rules?: SearchRules } = {},
): Prescription {
  const ranking = rankSetups(task, gear, options.fixed, options.rules);
  const ranked = bestWithTies(ranking);
  const rank = ({ set }: PrescribedSetup) => [
    set.hookups.length,
    set.chainPairs.reduce((sum, pairs) => sum + pairs, 0),
    options.before === undefined ? 0 : setChanges(options.before, set),
  ];
  const chosen: PrescribedSetup[] = [];
  while (ranked.length > 0 && chosen.length <= RUNNERS_UP) {
    const tied = ranked.filter(({ misfit }) => misfit <= ranked[0]!.misfit + TIE);
    const first = tied.reduce((a, b) => (comesBefore(rank(b), rank(a)) ? b : a));
    chosen.push(first);
    ranked.splice(ranked.indexOf(first), 1);
  }
  const [best, ...runnersUp] = chosen;
  return { best: best!, runnersUp, setsCompared: ranking.sets.length, repsSimulated: ranking.reps() };
}

/** The six best sets and all that tie with the sixth, best first. */
function bestWithTies(ranking: SetupRanking): PrescribedSetup[] {
  const found: PrescribedSetup[] = [];
  for (let score = ranking.next(); score !== null; score = ranking.next()) {
    const { index, barKg, misfit } = score;
    if (found.length > RUNNERS_UP && misfit > found[RUNNERS_UP]!.misfit + TIE) break;
    found.push({ set: ranking.sets[index]!, barKg, misfit });
  }
  return found;
}

function comesBefore(a: readonly number[], b: readonly number[]): boolean {
  const differs = a.findIndex((value, i) => value !== b[i]);
  return differs >= 0 && a[differs]! < b[differs]!;
}
