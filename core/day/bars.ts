import { boundsFor } from './boundsFor.ts';
import type { RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';
import { loadableMasses } from './plates.ts';
import type { SearchRules } from './SearchRules.ts';

/** The masses the bar may have: what the coach fixed, or what is loadable and no lighter than the bounds allow. */
export function barsFor(
  task: LifterTask,
  gear: RackGear,
  { barKg }: { barKg: number | null },
  rules: SearchRules,
): number[] {
  const { leastBarShare } = boundsFor(task.aim, rules.bounds);
  return barKg === null ? barsFrom(leastBarShare * task.referenceKg, gear, mostBarKg(task)) : [barKg];
}

/** A bar that may be held by itself; nothing that hangs from above makes more of it. */
function mostBarKg({ most }: LifterTask): number {
  if (most === undefined) return Number.POSITIVE_INFINITY;
  return Math.min(most.barKg, most.lockoutKg) / most.heaviestStep;
}

/**
 * The loadable masses from the least to the most; where the discs do not reach the least, or the most lies below it, the heaviest
 * that may be alone, and where none may, the lightest.
 */
export function barsFrom(leastKg: number, gear: RackGear, mostKg = Number.POSITIVE_INFINITY): number[] {
  const loadableKg = massesOf.get(gear) ?? loadableMasses(gear);
  massesOf.set(gear, loadableKg);
  const allowedKg = loadableKg.filter((kg, place) => place === 0 || kg <= mostKg);
  return allowedKg.filter((kg, place) => place === allowedKg.length - 1 || kg >= leastKg);
}

/** All lifters of a rack load the same discs: fifty sorts of them take half a second to work out. */
const massesOf = new WeakMap<RackGear, readonly number[]>();
