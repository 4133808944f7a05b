import { monthWord } from './dayWords.ts';

/** A kept date as one reads it: "25 Nov 2026". */
export function dateText(date: string): string {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  return `${day} ${monthWord(month)} ${year}`;
}
