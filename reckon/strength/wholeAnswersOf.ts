import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { StrengthPosterior } from '#core/strength/estimateStrength.ts';
import { filteredAnswers } from '#core/strength/filteredAnswers.ts';
import { risesOf } from '#core/strength/stall.ts';
import { strengthCourses } from '#core/strength/strengthCourses.ts';
import { strengthHistory } from '#core/strength/strengthHistory.ts';
import { answersOf, type BarKg } from './answersOf.ts';

/** Windows over which a rise is asked for. */
const RISE_WEEKS = [4, 8, 12, 16, 26];

/**
 * What is believed on the day `on`, how strength came to be so, that day always the last point and
 * the same number, and whether it rose of late.
 */
export function wholeAnswersOf(
  posterior: StrengthPosterior,
  on: string,
  barKg: BarKg,
): ReturnType<typeof answersOf> & Pick<StrengthEstimate, 'history' | 'rise'> {
  const today = answersOf(posterior, on, barKg);
  const answers = filteredAnswers(posterior);
  const earlier = strengthHistory(posterior, answers, barKg)
    .map(({ day, belief }) => ({ on: dateOfDay(day), ...belief }))
    .filter((point) => point.on !== on);
  const courses = strengthCourses(posterior, answers, dayNumber(on), RISE_WEEKS.at(-1)!);
  return {
    ...today,
    history: [...earlier, { on, ...today.maxKg }],
    rise: risesOf(courses, RISE_WEEKS),
  };
}
