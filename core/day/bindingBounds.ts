import { bandShare } from './allowedSets.ts';
import { boundsFor } from './boundsFor.ts';
import type { RackGear } from './Gear.ts';
import { hookupReach } from './hookupReach.ts';
import type { LifterTask } from './misfit.ts';
import { type Fixed, rankSetups } from './rankSetups.ts';
import { noBounds, type SearchRules } from './SearchRules.ts';

/** A bound that keeps a lifter from what the aim alone would take; shares of the reference maximum, or pairs. */
export interface BindingBound {
  bound: 'leastBar' | 'leastBands' | 'mostBands' | 'mostPairs';
  limit: number;
  wanted: number;
}

/** Which bounds the best setup without any would break; none where it keeps to all of them. */
export function bindingBounds(
  task: LifterTask,
  gear: RackGear,
  fixed: Fixed,
  rules: SearchRules,
): BindingBound[] {
  const free = rankSetups(task, gear, fixed, { ...rules, bounds: noBounds });
  // There always is one: the bare bar may hang under any rules.
  const best = free.fromBest()()!;
  const set = free.sets[best.index]!;
  const bounds = boundsFor(task.aim, rules.bounds);
  const barShare = best.barKg / task.referenceKg;
  const found: BindingBound[] = [];
  if (fixed.barKg === null && barShare < bounds.leastBarShare)
    found.push({ bound: 'leastBar', limit: bounds.leastBarShare, wanted: barShare });
  if (fixed.set !== null || set.hookups.length === 0) return found;
  const pairs = set.hookups.length;
  const bands = bandShare(
    set,
    gear.hookups.map((hookup) => hookupReach(hookup, task.travel)),
    task,
  );
  if (bands < bounds.leastBandShare)
    found.push({ bound: 'leastBands', limit: bounds.leastBandShare, wanted: bands });
  if (bands > bounds.mostBandShare)
    found.push({ bound: 'mostBands', limit: bounds.mostBandShare, wanted: bands });
  if (pairs > bounds.mostPairs) found.push({ bound: 'mostPairs', limit: bounds.mostPairs, wanted: pairs });
  return found;
}
