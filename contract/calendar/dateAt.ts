/** The calendar date of a moment where the clocks show a time zone, 2026-11-25. */
export function dateAt(moment: Date, timeZone: string): string {
  const known = formats.get(timeZone);
  if (known) return known.format(moment);
  const format = new Intl.DateTimeFormat('en-CA', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  });
  formats.set(timeZone, format);
  return format.format(moment);
}

/** To read the rules of a time zone takes a hundred times as long as to go by them. */
const formats = new Map<string, Intl.DateTimeFormat>();
