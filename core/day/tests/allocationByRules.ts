import * as fc from 'fast-check';
import type { AllocationInput } from '../Allocation.ts';
import { enumerateSetups } from '../enumerateSetups.ts';
import type { GearSet, RackGear } from '../Gear.ts';
import type { SetupRanking } from '../SetupRanking.ts';
import { anyPair } from './manyPieces.ts';

/** Evenly spread: doubles of fast-check lie near 0 mostly, where nothing is fought over. */
export const misfit = fc.integer({ min: 0, max: 2000 }).map((tenThousandths) => tenThousandths / 10_000);

export function rankingOf(sets: readonly GearSet[], misfits: readonly number[]): SetupRanking {
  const scoreOf = (index: number) => ({ index, barKg: 20, misfit: misfits[index]! });
  const order = sets.map((_, index) => index).sort((a, b) => misfits[a]! - misfits[b]!);
  const fromBest = () => {
    let given = 0;
    return () => (given < order.length ? scoreOf(order[given++]!) : null);
  };
  return {
    sets,
    fromBest,
    scoreOf,
    // A bound that is not tight, as that of an unsimulated set.
    lowerBoundOf: (index) => misfits[index]! / 2,
    reps: () => 0,
  };
}

/** Cost by trying every choice of every lifter, straight from the rules. */
export function leastByTrying({ racks, lifters, oneSetPull, bandChangeMinutes }: AllocationInput): number {
  const input = { racks, lifters, oneSetPull, bandChangeMinutes };
  let choices: number[][] = [[]];
  for (const { ranking } of lifters)
    choices = choices.flatMap((way) => ranking.sets.map((_, set) => [...way, set]));
  return choices.reduce(
    (least, choice) => Math.min(least, costByRules(input, choice)),
    Number.POSITIVE_INFINITY,
  );
}

/** What one choice costs; endless where it cannot hang. */
export function costByRules(
  { racks, lifters, oneSetPull, bandChangeMinutes }: Omit<AllocationInput, 'outOfTime'>,
  choice: readonly number[],
): number {
  const gear = racks[0]!;
  const weight = oneSetPull === 1 ? 1 : (0.01 * oneSetPull) / (1 - oneSetPull);
  const taken = lifters.map(({ ranking }, i) => ranking.sets[choice[i]!]!);
  const at = racks.map((_, rack) => taken.filter((_set, i) => lifters[i]!.rack === rack));
  const pairsAt = at.map(
    (sets) => new Set(sets.flatMap((set) => set.hookups.map((index) => gear.hookups[index]!.pairId))),
  );
  const hung = pairsAt.flatMap((pairs) => [...pairs]);
  if (new Set(hung).size < hung.length) return Number.POSITIVE_INFINITY;
  const chains = at.map((sets) => Math.max(0, ...sets.map((set) => set.chainPairs[0] ?? 0)));
  const stock = Math.max(...racks.map((rack) => rack.chains[0]?.pairs ?? 0));
  if (chains.reduce((sum, pairs) => sum + pairs, 0) > stock) return Number.POSITIVE_INFINITY;
  const free = racks.map((_, rack) =>
    taken.filter((_set, i) => lifters[i]!.rack === rack && !lifters[i]!.setFixed).map(key),
  );
  if (oneSetPull === 1 && free.some((keys) => new Set(keys).size > 1)) return Number.POSITIVE_INFINITY;
  let changes = 0;
  for (const sets of at) {
    sets.forEach((set, i) => {
      const next = sets[(i + 1) % sets.length]!;
      const differs = gear.hookups.filter(
        (_, h) => set.hookups.includes(h) !== next.hookups.includes(h),
      ).length;
      changes += differs + Math.abs((set.chainPairs[0] ?? 0) - (next.chainPairs[0] ?? 0));
    });
  }
  const misfit = lifters.reduce((sum, { ranking }, i) => sum + ranking.scoreOf(choice[i]!).misfit, 0);
  const pieces = taken.reduce((sum, set) => sum + set.hookups.length, 0);
  return misfit + weight * changes * bandChangeMinutes + 1e-4 * pieces;
}

const key = (set: GearSet) => `${set.hookups.join()}/${set.chainPairs.join()}`;

/** Lifters at three racks that all list the same pairs, no chains. */
export function crowded(pairCount: number, mostLifters: number) {
  const gear: RackGear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: pairs(pairCount) };
  const sets = enumerateSetups(gear);
  return fc
    .record({
      misfits: fc.array(
        fc.array(misfit, {
          minLength: sets.length,
          maxLength: sets.length,
        }),
        { minLength: 2, maxLength: mostLifters },
      ),
      oneSetPull: fc.constantFrom(0, 0.2, 0.5, 0.75, 0.9, 1),
    })
    .map(
      ({ misfits, oneSetPull }): AllocationInput => ({
        racks: [gear, gear, gear],
        lifters: misfits.map((own, i) => ({
          rack: i % 3,
          weight: 1,
          setFixed: false,
          ranking: rankingOf(sets, own),
        })),
        oneSetPull,
        bandChangeMinutes: 1,
        outOfTime: () => false,
      }),
    );
}

export function pairs(count: number): RackGear['hookups'] {
  return Array.from({ length: count }, (_, pair) => anyPair(`p${pair}`));
}
