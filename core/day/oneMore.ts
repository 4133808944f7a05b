import type { AllowedGear } from './allowedSets.ts';
import type { GearSet, RackGear } from './Gear.ts';

/** All sets with one piece more: another band pair in one of its hookups, or one more pair of a chain kind. */
export function oneMore(gear: RackGear, { usable, mostPairs }: AllowedGear, set: GearSet): GearSet[] {
  return [
    ...usable.flatMap((index) => (canHang(gear, mostPairs, set, index) ? [withHookup(set, index)] : [])),
    ...gear.chains.flatMap(({ pairs }, kind) =>
      set.chainPairs[kind]! < pairs ? [withChain(set, kind)] : [],
    ),
  ];
}

/** Whether one more pair may hang, and this pair does not yet. */
export function canHang(gear: RackGear, mostPairs: number, { hookups }: GearSet, index: number): boolean {
  const { pairId } = gear.hookups[index]!;
  return hookups.length < mostPairs && hookups.every((other) => gear.hookups[other]!.pairId !== pairId);
}

export function withHookup({ hookups, chainPairs }: GearSet, index: number): GearSet {
  return { hookups: [...hookups, index].sort((a, b) => a - b), chainPairs };
}

export function withChain({ hookups, chainPairs }: GearSet, kind: number): GearSet {
  return { hookups, chainPairs: chainPairs.with(kind, chainPairs[kind]! + 1) };
}
