import { allowedSets } from './allowedSets.ts';
import { boundsFor } from './boundsFor.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';
import { loadableMasses } from './plates.ts';
import { rankByRows } from './rankByRows.ts';
import { rankBySpeed } from './rankBySpeed.ts';
import { freeSearch, type SearchRules } from './SearchRules.ts';
import type { SetupRanking } from './SetupRanking.ts';

/** What the coach fixed by hand; null where free. */
export interface Fixed {
  barKg: number | null;
  set: GearSet | null;
}

/**
 * Ranks every set of bands and chains, each with its best bar mass, that the gear, the
 * rules and the coach's own choices allow.
 */
export function rankSetups(
  task: LifterTask,
  gear: RackGear,
  fixed: Fixed = { barKg: null, set: null },
  rules: SearchRules = freeSearch,
): SetupRanking {
  const { leastBarShare } = boundsFor(task.aim, rules.bounds);
  const sets = fixed.set === null ? allowedSets(gear, task, rules) : [fixed.set];
  const loadableKg = fixed.barKg === null ? barsFrom(leastBarShare * task.referenceKg, gear) : [fixed.barKg];
  const input = { task, gear, sets, loadableKg };
  return task.aim.by === 'speed' ? rankBySpeed(input, task.aim) : rankByRows(input);
}

/** The loadable masses from the least on; where the discs do not reach it, the heaviest alone. */
export function barsFrom(leastKg: number, gear: RackGear): number[] {
  const loadableKg = loadableMasses(gear);
  const enough = loadableKg.filter((kg) => kg >= leastKg);
  return enough.length > 0 ? enough : loadableKg.slice(-1);
}
