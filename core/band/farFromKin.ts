import { normalQuantile } from '#core/numeric/normal.ts';
import type { BandReading } from './BandCurve.ts';
import { bandPrior, WIDTH_SD_LN } from './bandPrior.ts';
import { bandTension } from './bandTension.ts';
import { fitBand } from './fitBand.ts';
import { latestMeasuring } from './latestMeasuring.ts';

type Dated = BandReading & { takenOn: string };

/** What a reading is held against, nearest kin first: the loop's own readings, the other loop of the pair, any loop of its width. */
export type Kin = 'itself' | 'otherLoop' | 'width';

/** A reading that pulls another multiple of what is expected than its kin explain. */
export interface FarFromKin {
  reading: Dated;
  kin: Kin;
  expectedN: number;
  /** The force may be so many times what is expected, or that much less, before it is asked about. */
  mostTimes: number;
}

/** One loop, relaxed end to end. */
interface Loop {
  restLengthM: number;
  readings: readonly Dated[];
}

/**
 * Nearer, as a ratio, to twice what is expected than to what is expected: the slips of the trade (both loops in the scale at
 * once, pounds for kilograms, a nought) double at least, and loops of one pair hardly differ by a fifth (McMaster, Cronin &
 * McGuigan 2010, J Strength Cond Res 24:2056-2064).
 */
const HALFWAY_TO_TWICE = Math.SQRT2;
/** Chance that a sound loop is questioned for its width alone, on either side (assumption). */
const QUESTIONED_IN_VAIN = 0.01;
const WIDTH_SDS = normalQuantile(1 - QUESTIONED_IN_VAIN);
/** Nearer to the length at rest the tape's own error decides (judgement). */
const LEAST_STRETCH = 1.1;
/** So much further than it was read, a curve still tells twice from once (judgement). */
const MOST_BEYOND = 1.3;

/**
 * Holds a reading against the nearest kin that says anything at its length. The width, in mm, speaks where neither loop was read
 * at two lengths. Null: nothing is odd, or nothing can be said so near to the length at rest.
 */
export function farFromKin(
  reading: Dated,
  loop: Loop & { widthMm: number },
  otherLoop: Loop,
): FarFromKin | null {
  const { lengthM, forceN, direction } = reading;
  const stretch = lengthM / loop.restLengthM;
  if (stretch < LEAST_STRETCH) return null;
  const { kin, expectedN } = nearestKin(stretch, direction, loop, otherLoop);
  const mostTimes = kin === 'width' ? Math.exp(WIDTH_SDS * WIDTH_SD_LN) : HALFWAY_TO_TWICE;
  return isWithin(forceN, { expectedN, mostTimes }) ? null : { reading, kin, expectedN, mostTimes };
}

/** Whether a force is one that its kin explain. */
export function isWithin(
  forceN: number,
  { expectedN, mostTimes }: Pick<FarFromKin, 'expectedN' | 'mostTimes'>,
): boolean {
  return Math.abs(Math.log(forceN / expectedN)) <= Math.log(mostTimes);
}

/** What is expected at a stretch by the nearest kin that says anything there. */
function nearestKin(
  stretch: number,
  direction: BandReading['direction'],
  loop: Loop & { widthMm: number },
  otherLoop: Loop,
): Pick<FarFromKin, 'kin' | 'expectedN'> {
  const ownN = measuredN(loop, stretch, direction);
  if (ownN !== null) return { kin: 'itself', expectedN: ownN };
  const otherN = measuredN(otherLoop, stretch, direction);
  if (otherN !== null) return { kin: 'otherLoop', expectedN: otherN };
  const { restLengthM, widthMm } = loop;
  const prior = bandPrior(restLengthM, widthMm, direction);
  return { kin: 'width', expectedN: bandTension(prior, stretch * restLengthM) };
}

/** What a loop's latest measuring says at a stretch; null where it was not read at two lengths, or not so far. */
function measuredN(
  { restLengthM, readings }: Loop,
  stretch: number,
  direction: BandReading['direction'],
): number | null {
  const taut = latestMeasuring(readings.filter(({ lengthM }) => lengthM > restLengthM));
  const lengths = taut.map(({ lengthM }) => lengthM);
  if (new Set(lengths).size < 2) return null;
  const lengthM = stretch * restLengthM;
  if (lengthM > MOST_BEYOND * Math.max(...lengths)) return null;
  const curve = fitBand({ restLengthM, widthMm: 1, readings: taut })[direction];
  const tensionN = bandTension(curve, lengthM);
  return curve.known === 'measured' && tensionN > 0 ? tensionN : null;
}
