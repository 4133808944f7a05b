import type { ReaderWrites } from '#contract/records/ReaderWrites.ts';
import type { FarBelow } from '#core/band/farBelow.ts';
import { percent } from './percent.ts';
import { timesRest } from './timesRest.ts';

/** What is odd about a reading far below another day's, and what to look at; lengths as multiples of the loop at rest, or as the reader writes them. */
export function farBelowSentence(
  { reading, other }: FarBelow,
  restLengthM: number,
  { lengthText, dateText = (date) => date }: ReaderWrites,
): string {
  const { lengthM, forceN } = reading;
  const less = percent(1 - forceN / other.forceN);
  const at = lengthText?.(lengthM) ?? timesRest(lengthM, restLengthM);
  return `Reads ${less} less force at ${at} than on ${dateText(other.takenOn)}: a band seldom loses so much, so check the number, its unit and the label of the band.`;
}
