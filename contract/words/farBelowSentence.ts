import type { FarBelow } from '#core/band/farBelow.ts';
import { percent } from './percent.ts';
import { timesRest } from './timesRest.ts';

/** How the reader writes lengths and dates; left out: lengths as multiples of the loop at rest, dates as 2026-11-25. */
export interface ReaderWrites {
  lengthText?: (lengthM: number) => string;
  dateText?: (date: string) => string;
}

/** What is odd about a reading far below another day's, and what to look at. */
export function farBelowSentence(
  { reading, other }: FarBelow,
  restLengthM: number,
  { lengthText, dateText = (date) => date }: ReaderWrites,
): string {
  const { lengthM, forceN } = reading;
  const less = percent(1 - forceN / other.forceN);
  const at = lengthText?.(lengthM) ?? timesRest(lengthM, restLengthM);
  return `Read with ${less} less force at ${at} than on ${dateText(other.takenOn)}: a band seldom loses so much, so look at the number, its unit and the label of the band.`;
}
