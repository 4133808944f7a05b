import type { PlanPlace } from '#contract/day/dayPlan.ts';
import { referenceWords } from '#contract/paper/referenceWords.ts';
import type { Aim } from '#contract/records/day.ts';
import { percent } from '#contract/words/percent.ts';

/** Less than half a point of strength is not worth a sentence. */
const LEAST_TOLD = 0.005;

/** What the proposals of a place go by where that was lowered since strength is not sure; null where it was not. */
export function goneBy(
  aim: Aim,
  { strength, reference }: Pick<NonNullable<PlanPlace['solved']>, 'strength' | 'reference'>,
  mass: (kg: number) => string,
): string | null {
  switch (aim.by) {
    case 'percent':
      return reference.loweredFromKg === null
        ? null
        : `Percentages are of ${mass(reference.kg)}, ${referenceWords(reference, mass)}.`;
    case 'capability': {
      if (strength.belowShare < LEAST_TOLD) return null;
      const [bottom, lockout] = [aim.bottomShare, aim.lockoutShare].map((share) =>
        percent((1 - strength.belowShare) * share),
      );
      const less = percent(strength.belowShare);
      return `Searched for ${bottom} of strength at the bottom and ${lockout} at lockout, ${less} less than asked, because this strength is not well known.`;
    }
    case 'speed':
      return null;
  }
}
