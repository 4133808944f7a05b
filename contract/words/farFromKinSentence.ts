import type { ReaderWrites } from '#contract/records/ReaderWrites.ts';
import type { FarFromKin, Kin } from '#core/band/farFromKin.ts';
import { timesRest } from './timesRest.ts';
import { timesText } from './timesText.ts';

/** What is odd about a reading beside what the loop, its partner or its width suggest. */
export function farFromKinSentence(
  { reading, kin, expectedN }: FarFromKin,
  restLengthM: number,
  { lengthText }: ReaderWrites,
): string {
  const { lengthM, forceN } = reading;
  const at = lengthText?.(lengthM) ?? timesRest(lengthM, restLengthM);
  return `At ${at} this is ${timesText(forceN / expectedN)} ${kinWords[kin]}: check the number and its unit, and that only one band of the pair hung from the scale.`;
}

const kinWords: Record<Kin, string> = {
  itself: 'what the other readings of this band suggest',
  otherLoop: 'what the other band of the pair pulls',
  width: 'what a band of this width usually pulls',
};
