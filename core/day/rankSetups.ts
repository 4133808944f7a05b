import { allowedGear } from './allowedSets.ts';
import { boundsFor } from './boundsFor.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { type ListingLimits, listSets } from './listSets.ts';
import type { LifterTask } from './misfit.ts';
import { loadableMasses } from './plates.ts';
import { rankByRows } from './rankByRows.ts';
import { rankBySpeed } from './rankBySpeed.ts';
import { freeSearch, type SearchRules } from './SearchRules.ts';
import type { SetupRanking } from './SetupRanking.ts';
import { setOutlook } from './setOutlook.ts';

/** What the coach fixed by hand; null where free. */
export interface Fixed {
  barKg: number | null;
  set: GearSet | null;
}

/** One lifter's stock is listed whole up to here: a tenth of a second of scoring, and memory that a browser has. */
export const MOST_SETS = 40_000;

/**
 * Ranks every set of bands and chains, each with its best bar mass, that the gear, the rules and the coach's own choices
 * allow. Of a stock with more sets than `limits` give leave to the most promising are ranked, and what the others cannot
 * go below is said.
 */
export function rankSetups(
  task: LifterTask,
  gear: RackGear,
  fixed: Fixed = { barKg: null, set: null },
  rules: SearchRules = freeSearch,
  limits: ListingLimits = { mostSets: MOST_SETS },
): SetupRanking {
  if (fixed.set !== null) return rankThese([fixed.set], task, gear, fixed, rules);
  const allowed = allowedGear(gear, task, rules);
  const loadableKg = barsFor(task, gear, fixed, rules);
  const bar = { leastKg: loadableKg[0]!, mostKg: loadableKg.at(-1)! };
  const outlook = () => setOutlook(task, gear, allowed, bar);
  const { sets, leftOut, leftOutFrom } = listSets(gear, allowed, outlook, limits);
  const ranking = rankThese(sets, task, gear, fixed, rules);
  return leftOut === 0 ? ranking : { ...ranking, leftOut: { count: leftOut, from: Math.sqrt(leftOutFrom) } };
}

/** Ranks the sets that are given, each with its best bar mass. */
export function rankThese(
  sets: readonly GearSet[],
  task: LifterTask,
  gear: RackGear,
  fixed: Fixed,
  rules: SearchRules,
): SetupRanking {
  const input = { task, gear, sets, loadableKg: barsFor(task, gear, fixed, rules) };
  return task.aim.by === 'speed' ? rankBySpeed(input, task.aim) : rankByRows(input);
}

/** The masses the bar may have: what the coach fixed, or what is loadable and no lighter than the bounds allow. */
function barsFor(task: LifterTask, gear: RackGear, { barKg }: Fixed, rules: SearchRules): number[] {
  const { leastBarShare } = boundsFor(task.aim, rules.bounds);
  return barKg === null ? barsFrom(leastBarShare * task.referenceKg, gear) : [barKg];
}

/** The loadable masses from the least on; where the discs do not reach it, the heaviest alone. */
export function barsFrom(leastKg: number, gear: RackGear): number[] {
  const loadableKg = massesOf.get(gear) ?? loadableMasses(gear);
  massesOf.set(gear, loadableKg);
  const enough = loadableKg.filter((kg) => kg >= leastKg);
  return enough.length > 0 ? enough : loadableKg.slice(-1);
}

/** All lifters of a rack load the same discs: fifty sorts of them take half a second to work out. */
const massesOf = new WeakMap<RackGear, readonly number[]>();
