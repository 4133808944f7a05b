import type { Kg, Share } from '../numeric/quantity.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { gearPieces, type Travel } from './gearPull.ts';
import { finestStepKg } from './plates.ts';

/** What a lifter may hold at most, whatever the aim asks for; infinite where nothing limits it. */
export interface MostLoad {
  /** On the bar, collars counted (kg). */
  barKg: Kg;
  /** Bar, bands and chains together at lockout, as a mass (kg). */
  lockoutKg: Kg;
  /** The heaviest step of the work as a share of the bar that is searched for; 1 or more. */
  heaviestStep: Share;
}

/** What bands and chains of a set add to the bar at lockout, as a mass (kg). */
function hungAtLockoutKg(travel: Travel, gear: RackGear): (set: GearSet) => number {
  const { hookups, chains } = gearPieces(gear, travel);
  return ({ hookups: hung, chainPairs }) => {
    const bandsN = hung.reduce((sum, index) => sum + hookups[index]!.pull.lockoutN, 0);
    const chainsN = chainPairs.reduce((sum, pairs, kind) => sum + pairs * chains[kind]!.pull.lockoutN, 0);
    return (bandsN + chainsN) / travel.gravityMps2;
  };
}

/** The heaviest bar (kg) that keeps every step of the work within what the lifter may hold, by what hangs on it. */
export function roomForBar(
  most: MostLoad | undefined,
  travel: Travel,
  gear: RackGear,
): (set: GearSet) => number {
  if (most === undefined) return () => Number.POSITIVE_INFINITY;
  const { barKg, lockoutKg, heaviestStep } = most;
  // A step heavier than the bar that is searched for is rounded to the discs by itself.
  const roundedKg = heaviestStep > 1 ? finestStepKg(gear) / 2 : 0;
  const room = (kg: number) => kg / heaviestStep - roundedKg;
  if (!Number.isFinite(lockoutKg)) return () => room(barKg);
  const hungKg = hungAtLockoutKg(travel, gear);
  return (set) => room(Math.min(barKg, lockoutKg - hungKg(set)));
}
