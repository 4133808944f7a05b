/** Why a date cannot be, for a field as the reader knows it and, on screen, dates as `spell` writes them; null: such a day can be. */
export function wrongDateSentence(
  field: string,
  date: string,
  today: string,
  spell?: (date: string) => string,
): string | null {
  const limit = (day: string) => (spell ? spell(day) : day);
  if (date > today)
    return `${field} is ${spell ? spell(date) : `"${date}"`}; it must be no later than today, ${limit(today)}.`;
  // As it was typed: "20 Nov 26" would look right.
  if (date < earliest) return `${field} is "${date}"; it must be no earlier than ${limit(earliest)}.`;
  return null;
}

/** Whoever lifts today was born later. */
const earliest = '1900-01-01';
