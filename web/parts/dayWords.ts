/** A local calendar date as a coach says it: "Thursday 26 November 2026". */
export function longDate(date: string): string {
  return dateIn({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' }, date);
}

/** The same for a narrow place: "Thu 26 Nov". */
export function shortDate(date: string): string {
  return dateIn({ weekday: 'short', day: 'numeric', month: 'short' }, date);
}

/** The local date so many days later. */
export function daysLater(date: string, days: number): string {
  const later = new Date(`${date}T00:00:00Z`);
  later.setUTCDate(later.getUTCDate() + days);
  return later.toISOString().slice(0, 10);
}

/** A moment as the clock on the wall shows it: "06:12", with the date where it is another day's. */
export function clockTime(moment: string, timeZone: string): string {
  const at = new Date(moment);
  const hour = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const;
  try {
    return new Intl.DateTimeFormat('en-GB', { ...hour, timeZone }).format(at);
  } catch {
    return new Intl.DateTimeFormat('en-GB', hour).format(at);
  }
}

function dateIn(options: Intl.DateTimeFormatOptions, date: string): string {
  const written = new Intl.DateTimeFormat('en-GB', { ...options, timeZone: 'UTC' });
  return written.format(new Date(`${date}T00:00:00Z`)).replace(',', '');
}
