import type { GearSet, RackGear } from './Gear.ts';

/** Loops that fit on one sleeve beside the discs and can still be handled safely; assumption, common practice. */
const LOOPS_A_SIDE = 3;

/**
 * Every set of bands and chains that the rack's gear allows: up to three band pairs, no pair twice, each in any of
 * its hookups, with 0 to all pairs of each chain. The bare bar is the first. `usable`: the hookups to choose from, ascending.
 */
export function enumerateSetups(
  { hookups, chains }: Pick<RackGear, 'hookups' | 'chains'>,
  usable: readonly number[] = [...hookups.keys()],
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
    if (choice.length === LOOPS_A_SIDE) break;
    for (const next of usable) {
      if (next <= (choice.at(-1) ?? -1)) continue;
      if (choice.every((index) => hookups[index]!.pairId !== hookups[next]!.pairId))
        bandChoices.push([...choice, next]);
    }
  }
  return bandChoices.flatMap((bands) => chainChoices.map((chainPairs) => ({ hookups: bands, chainPairs })));
}
