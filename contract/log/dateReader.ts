import type { CellReading } from '#contract/csv/cells.ts';

/**
 * Reads the dates of one column. 2026-04-03 is always clear. With dots, 03.04.2026, the day comes first unless another
 * such date of the file shows that it does not; `readAs` then says so. 03/04/2026 is read only where the others tell
 * whether the day or the month comes first.
 */
export function dateReader(cells: readonly string[]): {
  readDate: (cell: string) => CellReading;
  readAs: string | null;
} {
  const numeric = cells.map((cell) => numericDate.exec(cell.trim())).filter((found) => found !== null);
  const dotted = orderOf(numeric.filter(([text]) => text.includes('.')));
  const other = orderOf(numeric.filter(([text]) => !text.includes('.')));
  const readDate = (cell: string): CellReading => {
    const text = cell.trim();
    const [, year = '', month = '', day = ''] = isoDate.exec(text) ?? [];
    if (year !== '') return checked(text, year, month, day);
    const [, first = '', second = '', last = ''] = numericDate.exec(text) ?? [];
    if (last === '') return { wrong: `"${text}" is not a date; write it as 2026-04-03.` };
    const hasDots = text.includes('.');
    const { dayFirst, monthFirst, unclear } = hasDots ? dotted : other;
    if (dayFirst && monthFirst) return { wrong: contradiction(dayFirst[0], monthFirst[0]) };
    if (!hasDots && !dayFirst && !monthFirst && unclear) return { wrong: twoWays(unclear[0]) };
    return monthFirst ? checked(text, last, first, second) : checked(text, last, second, first);
  };
  const { dayFirst, monthFirst, unclear } = dotted;
  return { readDate, readAs: unclear && !dayFirst && !monthFirst ? dayBefore(unclear[0], readDate) : null };
}

const isoDate = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ][\d:.Z+]*)?$/;
const numericDate = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/;

/** The first date that shows the day, or the month, in front, and the first that could be either. */
function orderOf(dates: readonly RegExpExecArray[]) {
  return {
    dayFirst: dates.find(([, first]) => Number(first) > 12),
    monthFirst: dates.find(([, , second]) => Number(second) > 12),
    unclear: dates.find(([, first, second]) => Number(first) !== Number(second)),
  };
}

function checked(text: string, year: string, month: string, day: string): CellReading {
  const date = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const moment = new Date(`${date}T00:00:00Z`);
  if (!Number.isNaN(moment.getTime()) && moment.toISOString().startsWith(date)) return { value: date };
  return { wrong: `"${text}" is not a day of the calendar; write it as 2026-04-03.` };
}

function contradiction(dayFirst: string, monthFirst: string): string {
  return `The day comes first in "${dayFirst}" and the month in "${monthFirst}"; write all dates as 2026-04-03.`;
}

function twoWays(date: string): string {
  return `No date in this file shows whether "${date}" begins with the day or the month; write dates as 2026-04-03.`;
}

function dayBefore(date: string, readDate: (cell: string) => CellReading): string | null {
  const read = readDate(date);
  if ('wrong' in read) return null;
  return `Dates with dots were read with the day first: ${date} as ${String(read.value)}.`;
}
