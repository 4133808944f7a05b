import type { BandPair, BandReadingRecord } from '#contract/records/gear.ts';
import type { ReaderWrites } from '#contract/records/ReaderWrites.ts';
import { restLengthM } from '#contract/records/slackReading.ts';
import { fallingForces } from '#core/band/fallingForces.ts';
import { farBelow } from '#core/band/farBelow.ts';
import { measuringUpTo } from '#core/band/latestMeasuring.ts';
import { fallingSentence } from './fallingSentence.ts';
import { farBelowSentence } from './farBelowSentence.ts';

type Reading = Pick<BandReadingRecord, 'takenOn' | 'lengthM' | 'forceN' | 'direction'>;
type Place = Pick<Reading, 'lengthM' | 'forceN' | 'direction'> & { takenOn?: string };

/** Something odd about new readings: the places that it lies between, likeliest first, and the sentence that asks about it. */
export interface ReadingQuestion {
  at: [Place, ...Place[]];
  sentence: string;
}

/**
 * What new readings of one loop would bring that no band gives, beside those that the loop has: a force that falls while the length
 * grows, or one far below another day's. To be asked before they are kept, not refused. What was odd before is not asked again.
 */
export function readingQuestions(
  pair: BandPair,
  side: 'a' | 'b',
  had: readonly Reading[],
  added: readonly Reading[],
  writes: ReaderWrites = {},
): ReadingQuestion[] {
  const restM = restLengthM(pair, side);
  const isTaut = ({ lengthM }: Reading) => lengthM > restM;
  const all = [...had, ...added].filter(isTaut);
  const low = added.filter(isTaut).flatMap((reading): ReadingQuestion[] => {
    const found = farBelow(reading, all);
    return found === null ? [] : [{ at: [reading], sentence: farBelowSentence(found, restM, writes) }];
  });
  return [...newFalls(had.filter(isTaut), all, added, restM, writes), ...low];
}

function newFalls(
  had: readonly Reading[],
  all: readonly Reading[],
  added: readonly Reading[],
  restM: number,
  { lengthText }: ReaderWrites,
): ReadingQuestion[] {
  const dates = [...new Set(added.map(({ takenOn }) => takenOn))];
  const falls = (readings: readonly Reading[]) => {
    const found = dates.flatMap((date) => fallingForces(measuringUpTo(date, readings)));
    return new Map(found.map((fall) => [JSON.stringify(fall), fall]));
  };
  const before = falls(had);
  return [...falls(all)]
    .filter(([key]) => !before.has(key))
    .map(([, fall]) => {
      const { direction, longer, shorter } = fall;
      return {
        at: [
          { ...longer, direction },
          { ...shorter, direction },
        ],
        sentence: fallingSentence(fall, restM, lengthText),
      };
    });
}
