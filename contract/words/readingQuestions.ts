import type { BandPair, BandReadingRecord } from '#contract/records/gear.ts';
import type { ReaderWrites } from '#contract/records/ReaderWrites.ts';
import { restLengthM } from '#contract/records/slackReading.ts';
import { fallingForces } from '#core/band/fallingForces.ts';
import { farBelow } from '#core/band/farBelow.ts';
import { type FarFromKin, farFromKin, isWithin } from '#core/band/farFromKin.ts';
import { measuringUpTo } from '#core/band/latestMeasuring.ts';
import type { Unit } from '#core/units/units.ts';
import { fallingSentence } from './fallingSentence.ts';
import { farBelowSentence } from './farBelowSentence.ts';
import { farFromKinSentence } from './farFromKinSentence.ts';
import { meantInstead, type Offer, offer } from './meantInstead.ts';

type Reading = Pick<BandReadingRecord, 'takenOn' | 'lengthM' | 'forceN' | 'direction'>;
type Place = Pick<Reading, 'lengthM' | 'forceN' | 'direction'> & { takenOn?: string };

/** Something odd about new readings: the places that it lies between, likeliest first, and the sentence that asks about it. */
export interface ReadingQuestion {
  at: [Place, ...Place[]];
  sentence: string;
  /** Where the reading is held against its kin: how far it may be off, for what may have been meant instead. */
  farOff?: FarFromKin;
}

/**
 * What new readings of one loop would bring that no band gives, beside those that the loop and its partner have: a force that falls
 * while the length grows, one far below another day's, or one far from what the two loops and their width let one expect. To be
 * asked before they are kept, not refused. What was odd before is not asked again; of several readings far from their kin
 * the farthest is asked about.
 */
export function readingQuestions(
  pair: BandPair,
  side: 'a' | 'b',
  had: Readonly<Record<'a' | 'b', readonly Reading[]>>,
  added: readonly Reading[],
  writes: ReaderWrites = {},
): ReadingQuestion[] {
  const restM = restLengthM(pair, side);
  const isTaut = ({ lengthM }: Reading) => lengthM > restM;
  const own = had[side];
  const all = [...own, ...added].filter(isTaut);
  const low = added.filter(isTaut).flatMap((reading): ReadingQuestion[] => {
    const found = farBelow(reading, all);
    return found === null ? [] : [{ at: [reading], sentence: farBelowSentence(found, restM, writes) }];
  });
  const asked = [...newFalls(own.filter(isTaut), all, added, restM, writes), ...low];
  return asked.length > 0 ? asked : farthest(pair, side, had, added.filter(isTaut), writes);
}

/** What the scale may have shown instead, in the unit of the field: one band of the two that hung, pounds for kilograms, and so on. */
export function forceMeant({ reading, ...kin }: FarFromKin, unit: Unit): Offer[] {
  const { forceN } = reading;
  const isUsual = (newtons: number) => isWithin(newtons, kin);
  const half = isUsual(forceN / 2) && forceN > kin.expectedN;
  return [
    ...(half ? [offer('both bands at once', forceN / 2, unit)] : []),
    ...meantInstead(forceN, unit, isUsual),
  ];
}

function farthest(
  pair: BandPair,
  side: 'a' | 'b',
  had: Readonly<Record<'a' | 'b', readonly Reading[]>>,
  added: readonly Reading[],
  writes: ReaderWrites,
): ReadingQuestion[] {
  const loop = (of: 'a' | 'b') => ({ restLengthM: restLengthM(pair, of), readings: had[of] });
  const { widthMm } = pair;
  const found = added
    .map((reading) => farFromKin(reading, { ...loop(side), widthMm }, loop(side === 'a' ? 'b' : 'a')))
    .filter((one) => one !== null)
    .toSorted((x, y) => awayLn(y) - awayLn(x))
    .slice(0, 1);
  return found.map((farOff) => ({
    at: [farOff.reading],
    sentence: farFromKinSentence(farOff, restLengthM(pair, side), writes),
    farOff,
  }));
}

function awayLn({ reading, expectedN }: FarFromKin): number {
  return Math.abs(Math.log(reading.forceN / expectedN));
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
