import { enumerateSetups } from './enumerateSetups.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { Travel } from './gearPull.ts';
import { type HookupReach, hookupReach, isUsable } from './hookupReach.ts';
import type { SearchRules } from './SearchRules.ts';

/**
 * Every set of bands and chains that may be proposed to a lifter with this travel. Each pair pulls for this lifter and
 * is stretched safely, and no anchor carries more than it is rated for, all bands on it together. The bare bar always may.
 */
export function allowedSets(gear: RackGear, travel: Travel, rules: SearchRules): GearSet[] {
  const reaches = gear.hookups.map((hookup) => hookupReach(hookup, travel));
  const usable = reaches.flatMap((reach, index) => (isUsable(reach, rules.safeStretch) ? [index] : []));
  return enumerateSetups(gear, usable).filter((set) => anchorsHold(gear, set, reaches));
}

function anchorsHold(gear: RackGear, { hookups }: GearSet, reaches: readonly HookupReach[]): boolean {
  return hookups.every((index) => {
    const { anchorId } = gear.hookups[index]!;
    let pullN = 0;
    for (const other of hookups)
      if (gear.hookups[other]!.anchorId === anchorId) pullN += reaches[other]!.anchorN;
    return pullN <= reaches[index]!.ratedLoadN;
  });
}
