import type { SetEvidence } from '#core/strength/SetEvidence.ts';
import type { UnitSlip } from '#core/strength/unitSlips.ts';

/** A day with no other one of the slip so near stands by itself (judgement). */
const NEAR_DAYS = 14;
/** From one set to the next heavier one of a day nobody puts so much more on, but a slip does: 2.2 times (judgement). */
const MOST_STEP = 1.6;

/**
 * Of the sets that are kept out for a slip those whose own bars look so. The estimate keeps whole days out; on a day by itself
 * one bar alone is often written down wrongly, and what stands below a gap there was right: `besides`.
 */
export function slippedBars(
  { looksLike, sets: found }: UnitSlip,
  sets: readonly Pick<SetEvidence, 'day' | 'barKg'>[],
): { slipped: number[]; besides: number[] } {
  if (looksLike === 'tenfold') return { slipped: found, besides: [] };
  const days = new Set(found.map((i) => sets[i]!.day));
  const isAlone = (day: number) =>
    ![...days].some((other) => other !== day && Math.abs(other - day) <= NEAR_DAYS);
  const least = new Map(
    [...days].map((day) => {
      const bars = found.filter((i) => sets[i]!.day === day).map((i) => sets[i]!.barKg);
      return [day, isAlone(day) ? leastAboveGap(bars) : 0];
    }),
  );
  const looksSlipped = (i: number) => sets[i]!.barKg >= least.get(sets[i]!.day)!;
  return { slipped: found.filter(looksSlipped), besides: found.filter((i) => !looksSlipped(i)) };
}

/** The lightest bar that is reached from the heaviest one without too large a step. */
function leastAboveGap(barsKg: readonly number[]): number {
  const down = barsKg.toSorted((a, b) => b - a);
  const gap = down.findIndex((kg, i) => i > 0 && down[i - 1]! > MOST_STEP * kg);
  return down[gap < 0 ? down.length - 1 : gap - 1] ?? 0;
}
