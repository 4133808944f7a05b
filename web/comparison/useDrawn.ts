import type { Comparison, TakenOut } from '#contract/records/comparison.ts';
import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import { useClub } from '#web/api/useClub.ts';

export type Drawn = ComparisonPlan['drawn'][number];

/** Who was drawn, as the club knows them now. */
export interface DrawnNow {
  /** The name of today; of who is no longer kept that of the draw. */
  nameOf(one: Pick<Drawn, 'lifterId' | 'name'>): string;
  outOf(one: Pick<Drawn, 'lifterId'>): TakenOut | null;
}

export function useDrawn({ id }: Pick<Comparison, 'id'>): DrawnNow {
  const club = useClub();
  return {
    nameOf: ({ lifterId, name }) => club.lifter.find((one) => one.id === lifterId)?.name ?? name,
    outOf: ({ lifterId }) =>
      club.takenOut.find((one) => one.comparisonId === id && one.lifterId === lifterId) ?? null,
  };
}
