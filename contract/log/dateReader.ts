import type { CellReading } from '#contract/csv/cells.ts';

/**
 * Reads the dates of one column. 2026-04-03 is always clear; 03/04/2026 only where the file as a whole tells whether the
 * day or the month comes first.
 */
export function dateReader(cells: readonly string[]): (cell: string) => CellReading {
  const numeric = cells.map((cell) => numericDate.exec(cell.trim())).filter((found) => found !== null);
  const dayFirst = numeric.find(([, first]) => Number(first) > 12);
  const monthFirst = numeric.find(([, , second]) => Number(second) > 12);
  const unclear = numeric.find(([, first, second]) => Number(first) !== Number(second));
  return (cell) => {
    const text = cell.trim();
    const [, year = '', month = '', day = ''] = isoDate.exec(text) ?? [];
    if (year !== '') return checked(text, year, month, day);
    const [, first = '', second = '', last = ''] = numericDate.exec(text) ?? [];
    if (last === '') return { wrong: `"${text}" is not a date; write it as 2026-04-03.` };
    if (dayFirst && monthFirst) return { wrong: contradiction(dayFirst[0], monthFirst[0]) };
    if (!dayFirst && !monthFirst && unclear) return { wrong: twoWays(unclear[0]) };
    return monthFirst ? checked(text, last, first, second) : checked(text, last, second, first);
  };
}

const isoDate = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ][\d:.Z+]*)?$/;
const numericDate = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/;

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
  return `No date of this file tells whether "${date}" begins with the day or the month; write dates as 2026-04-03.`;
}
