import { dateAt } from '#contract/calendar/dateAt.ts';

/** Today's calendar date where the club is, 2026-11-25. */
export function localToday(timeZone: string, now: Date = new Date()): string {
  return dateAt(now, timeZone);
}
