import { counted } from '#contract/words/counted.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { percent } from '#contract/words/percent.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import type { PlannedDay } from './seasonPlan.ts';

/** What a day of a plan or a method asks for beside its groups: work on what is weak, sleds, pushing against pins. */
export function besideSentences(
  { accessories, sleds, holds }: Pick<PlannedDay, 'accessories' | 'sleds' | 'holds'>,
  mass: MassUnit,
): string[] {
  return [
    ...accessories.map(({ title, sets, reps }) => `${title}: ${sets} × ${reps}.`),
    ...sleds.map(
      ({ title, trips, distanceM, massKg, friction }) =>
        `${title}: ${trips} × ${distanceM} m with ${formatQuantity(massKg, mass)}, on a floor that holds back ${percent(friction)} of it.`,
    ),
    ...holds.map(
      ({ title, lift, places, sets, seconds }) =>
        `${title}: ${liftWord(lift)} against pins, ${counted(sets, 'set')} of ${seconds} s each at ${places.map(percent).join(', ')} of the way up.`,
    ),
  ];
}
