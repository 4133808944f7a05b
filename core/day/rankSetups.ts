import { allowedGear } from './allowedSets.ts';
import { barsFor } from './bars.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { type ListingLimits, listSets } from './listSets.ts';
import type { LifterTask } from './misfit.ts';
import { roomForBar } from './mostLoad.ts';
import { rankByRows } from './rankByRows.ts';
import { rankBySpeed } from './rankBySpeed.ts';
import { freeSearch, type SearchRules } from './SearchRules.ts';
import type { RankingInput, SetupRanking } from './SetupRanking.ts';
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
  const loadableKg = barsFor(task, gear, fixed, rules);
  const allowed = allowedGear(gear, task, rules, loadableKg[0]!);
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
  const loadableKg = barsFor(task, gear, fixed, rules);
  const input = { task, gear, sets, loadableKg, countFor: countFor(task, gear, fixed, loadableKg) };
  return task.aim.by === 'speed' ? rankBySpeed(input, task.aim) : rankByRows(input);
}

/** A bar that the coach fixed stays, whatever hangs on it; of the others as many as leave the load within what may be held. */
function countFor(
  task: LifterTask,
  gear: RackGear,
  { barKg }: Fixed,
  loadableKg: readonly number[],
): RankingInput['countFor'] {
  if (task.most === undefined || barKg !== null) return () => loadableKg.length;
  const roomKg = roomForBar(task.most, task.travel, gear);
  return (set) => Math.max(1, loadableKg.filter((kg) => kg <= roomKg(set)).length);
}
