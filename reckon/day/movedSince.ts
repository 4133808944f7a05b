import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { WORTH_LN } from '#core/strength/stall.ts';

/**
 * Ids of the lifters whose maximum, by the log as it is now, is another than the plan went by: by more than one per cent, the
 * smallest step on the bar. Less is no reason to print a sheet again. Where a plan went by a best, nothing is said.
 */
export function movedSince(
  { groups }: Pick<DayPlan, 'groups'>,
  estimates: readonly Pick<StrengthEstimate, 'lifterId' | 'lift' | 'maxKg'>[],
): string[] {
  const moved = groups.flatMap(({ lift, places }) =>
    places.flatMap(({ lifterId, solved }) => {
      const thenKg = solved?.strength.maxKg ?? null;
      const now = estimates.find((one) => one.lifterId === lifterId && one.lift === lift);
      if (thenKg === null || now === undefined) return [];
      return Math.abs(Math.log(now.maxKg.median / thenKg)) > WORTH_LN ? [lifterId] : [];
    }),
  );
  return [...new Set(moved)];
}
