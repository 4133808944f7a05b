import type { Load } from '#core/load/Load.ts';
import type { Kg } from '#core/numeric/quantity.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { pairOnBar, type Travel } from './gearPull.ts';

/** The load that a gear set and a bar make over one lifter's travel. */
export function gearLoad(gear: RackGear, set: GearSet, travel: Travel, barKg: Kg): Load {
  const hung = set.hookups.map((index) => pairOnBar(gear.hookups[index]!));
  return {
    ...travel,
    barKg,
    bands: hung.flatMap((hookup) => hookup.bands),
    hungBands: hung.flatMap((hookup) => hookup.hungBands),
    chains: set.chainPairs.flatMap((pairs, kind) => {
      const { chain } = gear.chains[kind]!;
      return pairs > 0 ? [{ ...chain, count: chain.count * pairs }] : [];
    }),
  };
}
