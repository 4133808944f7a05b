import type { SeasonPlan, SeasonWarning } from '#contract/season/seasonPlan.ts';
import { dayOfWarning } from '#contract/season/warningSentences.ts';
import { daysLater } from '#contract/words/dayWords.ts';

/** What a plan warns of in one week; what is said of no week in particular stands with the whole season. */
export function warningsOfWeek({ warnings }: Pick<SeasonPlan, 'warnings'>, monday: string): SeasonWarning[] {
  const sunday = daysLater(monday, 6);
  return warnings.filter((warning) => {
    const on = dayOfWarning(warning);
    return on >= monday && on <= sunday;
  });
}
