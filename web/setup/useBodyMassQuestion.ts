import { dateText } from '#contract/words/dateText.ts';
import { massQuestion } from '#contract/words/massQuestion.ts';
import type { Question } from '#contract/words/meantInstead.ts';
import { usualBodyMass } from '#contract/words/usualMass.ts';
import { useClub } from '#web/api/useClub.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** What is asked of a body mass far from the lifter's weighing nearest to that day. `but`: the weighing that is being changed. */
export function useBodyMassQuestion(
  lifterId: string | null,
  on: string,
  but?: string,
): (massKg: number) => Question | null {
  const { bodyMass } = useClub();
  const { mass } = useUnits();
  const own = bodyMass.filter((one) => one.lifterId === lifterId && one.id !== but);
  const usual = usualBodyMass(own, on, dateText);
  return (massKg) => (usual === null ? null : massQuestion(massKg, mass, usual));
}
