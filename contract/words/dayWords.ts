/** A local calendar date as a coach says it: "Thursday 26 November 2026". */
export function longDate(date: string): string {
  return `${weekdays[weekdayOf(date) - 1]} ${dayOf(date)} ${months[monthOf(date) - 1]} ${yearOf(date)}`;
}

/** The same for a narrow place: "Thu 26 Nov". */
export function shortDate(date: string): string {
  return `${weekdayWord(weekdayOf(date))} ${dayOf(date)} ${monthWord(monthOf(date))}`;
}

/** The day of the week by its number in ISO 8601, 1 for Monday: "Mon". */
export function weekdayWord(weekday: number): string {
  return weekdays[weekday - 1]?.slice(0, 3) ?? '';
}

/** The month by its number, 1 for January: "Nov". */
export function monthWord(month: number): string {
  return shortMonths[month - 1] ?? '';
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

/** Of a local date, from its text. Monday is 1, as in ISO 8601. */
const weekdayOf = (date: string) => new Date(`${date}T00:00:00Z`).getUTCDay() || 7;
const dayOf = (date: string) => Number(date.slice(8));
const monthOf = (date: string) => Number(date.slice(5, 7));
const yearOf = (date: string) => Number(date.slice(0, 4));

// A slow tablet takes 20 ms and more to make one of the platform's own writers of dates, before the first page is drawn.
const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
/** As British English shortens them (Unicode CLDR, en-GB): September keeps four letters. */
const shortMonths = months.map((name) => name.slice(0, name === 'September' ? 4 : 3));
