import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import type { StrengthPosterior } from '#core/strength/estimateStrength.ts';
import { filteredAnswers } from '#core/strength/filteredAnswers.ts';
import { risesOf } from '#core/strength/stall.ts';
import { strengthCourses } from '#core/strength/strengthCourses.ts';
import { strengthHistory } from '#core/strength/strengthHistory.ts';
import { type BarKg, maxKgOn } from './answersOf.ts';
import { dateOfDay, dayNumber } from './dayNumber.ts';

/** Windows over which a rise is asked for. */
const RISE_WEEKS = [4, 8, 12, 16, 26];

/** How strength came to be what it is on the day `on`, which is always the last point, and whether it rose of late. */
export function courseOf(
  posterior: StrengthPosterior,
  on: string,
  barKg: BarKg,
): Pick<StrengthEstimate, 'history' | 'rise'> {
  const answers = filteredAnswers(posterior);
  const history = strengthHistory(posterior, answers, barKg).map(({ day, belief }) => ({
    on: dateOfDay(day),
    ...belief,
  }));
  const courses = strengthCourses(posterior, answers, dayNumber(on), RISE_WEEKS.at(-1)!);
  return {
    history: history.at(-1)?.on === on ? history : [...history, { on, ...maxKgOn(posterior, on, barKg) }],
    rise: risesOf(courses, RISE_WEEKS),
  };
}
