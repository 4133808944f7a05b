/** A local calendar date as a coach says it: "Thursday 26 November 2026". */
export function longDate(date: string): string {
  return dateIn(long, date);
}

/** The same for a narrow place: "Thu 26 Nov". */
export function shortDate(date: string): string {
  return dateIn(short, date);
}

/** The day of the week by its number in ISO 8601, 1 for Monday: "Mon". */
export function weekdayWord(weekday: number): string {
  return weekdays[weekday - 1] ?? '';
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

const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

// Made once: a browser takes milliseconds to make one, and a list writes many dates.
const long = inUtc({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' });
const short = inUtc({ weekday: 'short', day: 'numeric', month: 'short' });

function inUtc(options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat('en-GB', { ...options, timeZone: 'UTC' });
}

function dateIn(written: Intl.DateTimeFormat, date: string): string {
  return written.format(new Date(`${date}T00:00:00Z`)).replace(',', '');
}
