import { dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';

/** Where a comparison stands on a day: "week 7 of 16". */
export function standingText(
  { startsOn, endsOn, weeks }: Pick<ComparisonPlan, 'startsOn' | 'endsOn' | 'weeks'>,
  today: string,
): string {
  if (today < startsOn) return 'not begun';
  if (today >= endsOn) return 'over';
  return `week ${Math.floor((dayNumber(today) - dayNumber(startsOn)) / 7) + 1} of ${weeks}`;
}
