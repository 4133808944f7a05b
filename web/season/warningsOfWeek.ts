import type { SeasonPlan, SeasonWarning } from '#contract/season/seasonPlan.ts';
import { daysLater } from '#contract/words/dayWords.ts';

/** What a plan warns of in one week; what is said of no week in particular stands with the whole season. */
export function warningsOfWeek({ warnings }: Pick<SeasonPlan, 'warnings'>, monday: string): SeasonWarning[] {
  const sunday = daysLater(monday, 6);
  return warnings.filter((warning) => {
    if ('date' in warning) return warning.date >= monday && warning.date <= sunday;
    return 'monday' in warning && warning.monday === monday;
  });
}
