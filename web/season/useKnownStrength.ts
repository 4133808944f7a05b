import { useMemo } from 'react';
import type { Lift } from '#contract/records/lift.ts';
import { setFromBest } from '#reckon/strength/setFromBest.ts';
import { useClub } from '#web/api/useClub.ts';
import { useEstimate } from '#web/api/useEstimates.ts';
import { useLifterSets } from '#web/api/useLifterSets.ts';
import { useStrengthAhead } from '#web/api/useWeeksAhead.ts';
import type { LifterSeason, SeasonView } from './SeasonView.ts';
import type { KnownStrength } from './strengthInSeason.ts';

/** What is known of one lift of a lifter, as far as it is there. */
export function useKnownStrength(season: SeasonView, { lifter }: LifterSeason, lift: Lift): KnownStrength {
  const { best } = useClub();
  const estimate = useEstimate(lifter.id, lift, true);
  const { data: ahead } = useStrengthAhead(season.id, lifter.id);
  const { data: logged } = useLifterSets(lifter.id);
  return useMemo(() => {
    const own = best.filter(({ lifterId }) => lifterId === lifter.id).map(setFromBest);
    return {
      equipment: lifter.equipment,
      estimate,
      maxima: ahead?.lifts.find((one) => one.lift === lift)?.weeks,
      sets: [...own, ...(logged ?? [])].filter((set) => set.lift === lift),
    };
  }, [best, lifter, lift, estimate, ahead, logged]);
}
