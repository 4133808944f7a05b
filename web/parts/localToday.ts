import { dateAt } from '#contract/calendar/dateAt.ts';

/** Today's calendar date where the club is, 2026-11-25. */
export function localToday(timeZone: string, now: Date = new Date()): string {
  return dateAt(now, timeZone);
}

/** A kept date as one reads it: "25 Nov 2026". */
export function dateText(date: string): string {
  const words = new Intl.DateTimeFormat('en-GB', {
    timeZone: 'UTC',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  });
  return words.format(new Date(`${date}T00:00:00Z`));
}
