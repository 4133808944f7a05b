import type { Place } from '#contract/records/day.ts';
import type { GearSet, RackGear } from '#core/day/Gear.ts';
import type { Fixed } from '#core/day/rankSetups.ts';

/** What the coach fixed for one place, in terms of the rack's gear, which holds whatever was set by hand. With bands or chains fixed, the other counts as none. */
export function fixedByCoach({ byCoach }: Place, gear: RackGear): Fixed {
  if (byCoach === null) return { barKg: null, set: null };
  const { barKg, bands, chains } = byCoach;
  return {
    barKg,
    set: bands === null && chains === null ? null : gearSetOf(bands ?? [], chains ?? [], gear),
  };
}

function gearSetOf(
  bands: readonly { bandPairId: string; hookupId: string }[],
  chains: readonly { chainPairId: string; pairs: number }[],
  gear: RackGear,
): GearSet {
  const hookups = bands.map(({ bandPairId, hookupId }) =>
    gear.hookups.findIndex((hung) => hung.pairId === bandPairId && hung.hookupId === hookupId),
  );
  const chainPairs = gear.chains.map(
    ({ chainPairId }) => chains.find((chain) => chain.chainPairId === chainPairId)?.pairs ?? 0,
  );
  return { hookups: hookups.sort((a, b) => a - b), chainPairs };
}
