import { earliestDate, latestDate } from './dateRange.ts';

/**
 * Why a date cannot be, for a field as the reader knows it and, on screen, dates as `spell` writes them; null: such a day can be.
 * `today` is given of what was done or measured, which never lies ahead.
 */
export function wrongDateSentence(
  field: string,
  date: string,
  today: string | null,
  spell?: (date: string) => string,
): string | null {
  const limit = (day: string) => (spell ? spell(day) : day);
  if (today !== null && date > today)
    return `${field} is ${spell ? spell(date) : `"${date}"`}; it must be no later than today, ${limit(today)}.`;
  // As it was typed: "20 Nov 26" would look right. A year of five digits is a date of more letters.
  if (date > latestDate || date.length > latestDate.length)
    return `${field} is "${date}"; it must be no later than ${limit(latestDate)}.`;
  if (date < earliestDate) return `${field} is "${date}"; it must be no earlier than ${limit(earliestDate)}.`;
  return null;
}
