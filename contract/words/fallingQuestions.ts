import type { BandPair, BandReadingRecord } from '#contract/records/gear.ts';
import { restLengthM } from '#contract/records/slackReading.ts';
import { type FallingForce, fallingForces } from '#core/band/fallingForces.ts';
import { measuringUpTo } from '#core/band/latestMeasuring.ts';
import { fallingSentence } from './fallingSentence.ts';

type Reading = Pick<BandReadingRecord, 'takenOn' | 'lengthM' | 'forceN' | 'direction'>;

/** Something odd about new readings: a force that falls while the length grows, and the sentence that asks about it. */
export interface FallingQuestion {
  fall: FallingForce;
  sentence: string;
}

/**
 * What new readings of one loop would bring that no band gives, beside those that the loop has: to be asked before they are
 * kept, not refused. What was odd before is not asked again. `lengthText` as for the sentence.
 */
export function fallingQuestions(
  pair: BandPair,
  side: 'a' | 'b',
  had: readonly Reading[],
  added: readonly Reading[],
  lengthText?: (lengthM: number) => string,
): FallingQuestion[] {
  const restM = restLengthM(pair, side);
  const dates = [...new Set(added.map(({ takenOn }) => takenOn))];
  const falls = (readings: readonly Reading[]) => {
    const taut = readings.filter(({ lengthM }) => lengthM > restM);
    const found = dates.flatMap((date) => fallingForces(measuringUpTo(date, taut)));
    return new Map(found.map((fall) => [JSON.stringify(fall), fall]));
  };
  const before = falls(had);
  return [...falls([...had, ...added])]
    .filter(([key]) => !before.has(key))
    .map(([, fall]) => ({ fall, sentence: fallingSentence(fall, restM, lengthText) }));
}
