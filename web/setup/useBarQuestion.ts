import type { Lift } from '#contract/records/lift.ts';
import { massQuestion } from '#contract/words/massQuestion.ts';
import type { Question } from '#contract/words/meantInstead.ts';
import { usualBar } from '#contract/words/usualMass.ts';
import { useClub } from '#web/api/useClub.ts';
import { useLifterSets } from '#web/api/useLifterSets.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** What is asked of a bar far from everything that the lifter lifted. `but`: the record that is being changed. */
export function useBarQuestion(
  lifterId: string | null,
  lift: Lift,
  isBest: boolean,
  but?: string,
): (barKg: number) => Question | null {
  const { best } = useClub();
  const { mass } = useUnits();
  const { data: sets = [] } = useLifterSets(lifterId);
  const lifted = [
    ...best.filter((one) => one.lifterId === lifterId),
    ...sets.filter(({ made, struckAt }) => made > 0 && struckAt === null),
  ].filter(({ id }) => id !== but);
  const usual = usualBar(lifted, lift, isBest);
  return (barKg) => (usual === null ? null : massQuestion(barKg, mass, usual));
}
