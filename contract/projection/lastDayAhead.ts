import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';

/** Further ahead nothing can be said of a lifter. */
export const mostDaysAhead = 366;

/** The last day of which anything can be said. */
export function lastDayAhead(today: string): string {
  return dateOfDay(dayNumber(today) + mostDaysAhead);
}
