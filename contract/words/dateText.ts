/** A kept date as one reads it: "25 Nov 2026". */
export function dateText(date: string): string {
  return words.format(new Date(`${date}T00:00:00Z`));
}

// Made once: a browser takes milliseconds to make one, and a list writes many dates.
const words = new Intl.DateTimeFormat('en-GB', {
  timeZone: 'UTC',
  day: 'numeric',
  month: 'short',
  year: 'numeric',
});
