import { boundsFor } from './boundsFor.ts';
import { enumerateSetups } from './enumerateSetups.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { type HookupReach, hookupReach, isUsable } from './hookupReach.ts';
import { lateBands } from './lateBands.ts';
import type { LifterTask } from './misfit.ts';
import { roomForBar } from './mostLoad.ts';
import type { SearchRules } from './SearchRules.ts';

type Task = Pick<LifterTask, 'travel' | 'aim' | 'referenceKg' | 'most'>;

/** What may be proposed to a lifter: the hookups to choose from, the most pairs at once, and which sets of them. */
export interface AllowedGear {
  usable: number[];
  mostPairs: number;
  isAllowed(set: GearSet): boolean;
}

/**
 * Each pair pulls for this lifter and is stretched safely, no anchor carries more than it is rated for, all bands on it
 * together, they do not come in too late to be judged, what hangs keeps to the bounds, and leaves the lightest bar that
 * is wanted within what the lifter may hold. The bare bar always may: no bound forces bands on anybody.
 */
export function allowedGear(gear: RackGear, task: Task, rules: SearchRules, lightestKg: number): AllowedGear {
  const reaches = gear.hookups.map((hookup) => hookupReach(hookup, task.travel));
  const usable = reaches.flatMap((reach, index) => (isUsable(reach, rules.safeStretch) ? [index] : []));
  const { leastBandShare, mostBandShare, mostPairs } = boundsFor(task.aim, rules.bounds);
  const isLate = lateBands(gear, task, rules);
  const roomKg = roomForBar(task.most, task.travel, gear);
  const isAllowed = (set: GearSet) => {
    if (isBare(set)) return true;
    if (roomKg(set) < lightestKg) return false;
    if (set.hookups.length === 0) return true;
    const share = bandShare(set, reaches, task);
    if (share < leastBandShare || share > mostBandShare) return false;
    return !isLate(set) && anchorsHold(gear, set, reaches);
  };
  return { usable, mostPairs, isAllowed };
}

/** Every set of bands and chains that may be proposed to a lifter. */
export function allowedSets(gear: RackGear, { usable, mostPairs, isAllowed }: AllowedGear): GearSet[] {
  return enumerateSetups(gear, usable, mostPairs).filter(isAllowed);
}

/** Pull of all bands at lockout, or at the bottom for those from above, over the reference maximum. */
export function bandShare(
  { hookups }: GearSet,
  reaches: readonly HookupReach[],
  { travel, referenceKg }: Pick<Task, 'travel' | 'referenceKg'>,
): number {
  let [bottomN, lockoutN] = [0, 0];
  for (const index of hookups) {
    bottomN += reaches[index]!.bottomN;
    lockoutN += reaches[index]!.lockoutN;
  }
  return Math.max(Math.abs(bottomN), Math.abs(lockoutN)) / (travel.gravityMps2 * referenceKg);
}

function isBare({ hookups, chainPairs }: GearSet): boolean {
  return hookups.length === 0 && chainPairs.every((pairs) => pairs === 0);
}

/** Whether each anchor point carries all that hangs on it. */
export function anchorsHold(
  gear: Pick<RackGear, 'hookups'>,
  { hookups }: GearSet,
  reaches: readonly HookupReach[],
): boolean {
  return hookups.every((index) => {
    const { anchorId } = gear.hookups[index]!;
    let pullN = 0;
    for (const other of hookups)
      if (gear.hookups[other]!.anchorId === anchorId) pullN += reaches[other]!.anchorN;
    return pullN <= reaches[index]!.ratedLoadN;
  });
}
