import type { GearSet, RackGear } from './Gear.ts';
import { noBounds } from './SearchRules.ts';

/**
 * Every set of bands and chains that the rack's gear allows: up to `mostPairs` band pairs, no pair twice, each in any of
 * its hookups, with 0 to all pairs of each chain. The bare bar is the first. `usable`: the hookups to choose from, ascending.
 */
export function enumerateSetups(
  { hookups, chains }: Pick<RackGear, 'hookups' | 'chains'>,
  usable: readonly number[] = [...hookups.keys()],
  mostPairs = noBounds.mostPairs,
): GearSet[] {
  let chainChoices: number[][] = [[]];
  for (const { pairs } of chains) {
    chainChoices = chainChoices.flatMap((choice) =>
      Array.from({ length: pairs + 1 }, (_, count) => [...choice, count]),
    );
  }
  const bandChoices: number[][] = [[]];
  for (let i = 0; i < bandChoices.length; i++) {
    const choice = bandChoices[i]!;
    if (choice.length === mostPairs) break;
    for (const next of usable) {
      if (next <= (choice.at(-1) ?? -1)) continue;
      if (choice.every((index) => hookups[index]!.pairId !== hookups[next]!.pairId))
        bandChoices.push([...choice, next]);
    }
  }
  return bandChoices.flatMap((bands) => chainChoices.map((chainPairs) => ({ hookups: bands, chainPairs })));
}
