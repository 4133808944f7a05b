import type { GearSet } from './Gear.ts';
import { setChanges } from './setChanges.ts';

/** Misfit that one minute of band changes is worth in the middle of the coach's slider: one point (assumption). */
const MISFIT_A_MINUTE = 0.01;
/** The slider's end would make a minute worth infinitely much; from here on one band set is a rule instead. */
const HIGHEST_PULL = 0.99;

/**
 * What a minute of band changes costs in units of misfit, from the coach's slider between "each their own" (0) and
 * "one band set for the whole rack" (1):
 *
 *   weight = 0.01 * pull / (1 - min(pull, 0.99))
 */
export function handlingWeight(oneSetPull: number): number {
  return (MISFIT_A_MINUTE * oneSetPull) / (1 - Math.min(oneSetPull, HIGHEST_PULL));
}

/** Hookups of pairs and pairs of chains taken off or put on while the lifters of a rack take one turn each, all round. */
export function rotationChanges(setsInOrder: readonly GearSet[]): number {
  return setsInOrder.reduce(
    (sum, set, i) => sum + setChanges(set, setsInOrder[(i + 1) % setsInOrder.length]!),
    0,
  );
}
