import type { KeyedSetup } from '#contract/log/setupKey.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Units } from '#web/parts/ViewUnits.tsx';
import { setupWords } from '#web/setup/setWords.ts';

/**
 * Each of several exact setups in words. Two racks may each have a "doubled, low", and bands there pull differently: where
 * two setups of a lift would read the same, the rack tells them apart.
 */
export function setupNames(
  club: ClubRecords,
  setups: readonly KeyedSetup[],
  units: Pick<Units, 'mass' | 'length'>,
): string[] {
  const words = setups.map((one) => setupWords(club, one, units));
  const seen = new Map<string, number>();
  setups.forEach(({ lift }, i) => {
    const key = `${lift} ${words[i]}`;
    seen.set(key, (seen.get(key) ?? 0) + 1);
  });
  return setups.map(({ lift, setup }, i) => {
    const rack = seen.get(`${lift} ${words[i]}`) === 1 ? undefined : rackOf(club, setup);
    return rack === undefined ? words[i]! : `${words[i]}, ${rack}`;
  });
}

/** The rack in which the bands hang; a hookup belongs to one. */
function rackOf(club: ClubRecords, { bands }: KeyedSetup['setup']): string | undefined {
  const hookup = club.hookup.find(({ id }) => id === bands[0]?.hookupId);
  return club.rack.find(({ id }) => id === hookup?.rackId)?.label;
}
