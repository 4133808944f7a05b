import type { Setup } from '#contract/records/lift.ts';
import type { UnitSlip } from '#core/strength/unitSlips.ts';
import { toSi } from '#core/units/units.ts';

/** In which way a bar looks as if it had been written down wrongly. */
export type LooksLike = UnitSlip['looksLike'];

/** The bar (kg) that was meant where pounds, or a nought too many, were written down as kilograms. */
export function meantBarKg(writtenKg: number, looksLike: LooksLike): number {
  return looksLike === 'pounds' ? toSi(writtenKg, 'lb') : writtenKg / 10;
}

/** The same set with the bar that was meant. */
export function withMeantBar<S extends { setup: Setup }>(set: S, looksLike: LooksLike): S {
  return { ...set, setup: { ...set.setup, barKg: meantBarKg(set.setup.barKg, looksLike) } };
}

/** One weight as it was written down, what was meant by it, and how many sets have it. */
export interface MeantBar {
  writtenKg: number;
  meantKg: number;
  sets: number;
}

/** The bars of sets that slipped alike, lightest first. */
export function meantBars(sets: readonly { setup: Setup }[], looksLike: LooksLike): MeantBar[] {
  const times = new Map<number, number>();
  for (const { setup } of sets) times.set(setup.barKg, (times.get(setup.barKg) ?? 0) + 1);
  return [...times]
    .sort(([a], [b]) => a - b)
    .map(([writtenKg, count]) => ({ writtenKg, meantKg: meantBarKg(writtenKg, looksLike), sets: count }));
}
