/** The calendar date of a moment where the clocks show a time zone, 2026-11-25. */
export function dateAt(moment: Date, timeZone: string): string {
  const parts = new Intl.DateTimeFormat('en-CA', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  });
  return parts.format(moment);
}
