import { zeroPhase } from '../numeric/zeroPhase.ts';
import { evenTrack } from './evenTrack.ts';
import type { TrackPoint, TrackReading, TrackRep } from './Track.ts';
import { type Leg, turningLegs } from './turningLegs.ts';

/** Movements of the body hold little above 6 Hz (Winter, Biomechanics and Motor Control of Human Movement, ch. 3; from memory). */
const CUTOFF_HZ = 6;
/** Slower tracks are smoothed at this share of their rate. */
const CUTOFF_SHARE = 0.25;
/** What is smaller than this is a step, a breath or a bounce on the floor: share of all that was travelled, and metres. */
const LEAST_SHARE = 0.1;
const LEAST_M = 0.03;
/** A way as long as this share of the longest counts for the range; a rep is made within a tenth of lockout. */
const WHOLE_SHARE = 0.8;
const MADE_SHARE = 0.1;
/** A rep begins in the lowest three tenths: a bar that is lifted out of the rack does not. */
const BOTTOM_SHARE = 0.3;
/** From here on the bar is on its way; before and after it may rest on the chest, the floor or straight arms. */
const UNDER_WAY_SHARE = 0.05;
/** Slower than this the bar stands: three standard deviations of the speed's noise, within limits. */
const STILL_MPS = { least: 0.01, most: 0.05 };

/**
 * Finds the reps in a track of the bar: made even, smoothed by a zero-phase Butterworth low-pass of fourth order,
 * differentiated by central differences. Reps are the ways up from the bottom of the range; a set may begin at the top
 * (squat, bench press) or at the bottom (deadlift). A way up that ends a tenth of the range or more below lockout is a
 * miss; one lower than a tenth of the range is not seen. `points`: 20 or more, times rising.
 */
export function repsOfTrack(points: readonly TrackPoint[]): TrackReading {
  const { rateHz, startS, zM: rawM, xM } = evenTrack(points);
  const cutoffHz = Math.min(CUTOFF_HZ, CUTOFF_SHARE * rateHz);
  const zM = zeroPhase(rawM, cutoffHz, rateHz);
  const speedMps = slopes(zM, rateHz);
  const stillMps = stillSpeed(rawM, zM, cutoffHz, rateHz);
  const spanM = highest(zM) - lowest(zM);
  const legs = turningLegs(zM, Math.max(LEAST_M, LEAST_SHARE * spanM));
  const range = rangeOf(legs, zM);
  const track = { zM, speedMps, rateHz, startS, xM, stillMps };
  const reps = range === null ? [] : legs.flatMap((leg) => repOfLeg(leg, range, track, points));
  return { rateHz, cutoffHz, startS, zM, speedMps, range: reps.length === 0 ? null : range, reps };
}

type Range = NonNullable<TrackReading['range']>;

function slopes(zM: Float64Array, rateHz: number): Float64Array {
  const last = zM.length - 1;
  return zM.map((_, i) => {
    const low = Math.max(0, i - 1);
    const high = Math.min(last, i + 1);
    return ((zM[high]! - zM[low]!) * rateHz) / (high - low);
  });
}

/**
 * Noise of the speed from what the filter took away: evenly spread noise keeps `2 cutoff / rate` of its variance, and
 * the slope of what is kept has `(2 pi cutoff)^2 / 3` of that.
 */
function stillSpeed(rawM: Float64Array, zM: Float64Array, cutoffHz: number, rateHz: number): number {
  const kept = (2 * cutoffHz) / rateHz;
  const removed = zM.reduce((sum, z, i) => sum + (rawM[i]! - z) ** 2, 0) / zM.length;
  const noise = Math.sqrt((removed / (1 - kept)) * kept) * ((2 * Math.PI * cutoffHz) / Math.sqrt(3));
  return Math.min(STILL_MPS.most, Math.max(STILL_MPS.least, 3 * noise));
}

/** Bottom and lockout: the middle ones of all ways, up or down, that are nearly as long as the longest. */
function rangeOf(legs: readonly Leg[], zM: Float64Array): Range | null {
  const lengthM = ({ from, to }: Leg) => Math.abs(zM[to]! - zM[from]!);
  const longestM = Math.max(0, ...legs.map(lengthM));
  const whole = legs.filter((leg) => lengthM(leg) >= WHOLE_SHARE * longestM);
  if (whole.length === 0) return null;
  return {
    bottomM: middle(whole.map(({ from, to, up }) => zM[up ? from : to]!)),
    lockoutM: middle(whole.map(({ from, to, up }) => zM[up ? to : from]!)),
  };
}

interface EvenSpeeds {
  zM: Float64Array;
  speedMps: Float64Array;
  xM: Float64Array | null;
  rateHz: number;
  startS: number;
  stillMps: number;
}

function repOfLeg(leg: Leg, range: Range, track: EvenSpeeds, points: readonly TrackPoint[]): TrackRep[] {
  const { zM, speedMps, xM, rateHz, startS } = track;
  const rangeM = range.lockoutM - range.bottomM;
  if (!leg.up || zM[leg.from]! > range.bottomM + BOTTOM_SHARE * rangeM) return [];
  const { from, to } = underWay(leg, track);
  const bottomM = between(zM, from);
  const topM = between(zM, to);
  const made = topM >= range.lockoutM - MADE_SHARE * rangeM;
  const [fromS, toS] = [startS + from / rateHz, startS + to / rateHz];
  const onTheWay = (values: Float64Array) => values.subarray(Math.floor(from), Math.ceil(to) + 1);
  return [
    {
      made,
      startS: fromS,
      endS: toS,
      bottomM,
      topM,
      meanSpeedMps: (topM - bottomM) / (toS - fromS),
      peakSpeedMps: highest(onTheWay(speedMps)),
      stoppedAtS: made ? null : (topM - range.bottomM) / rangeM,
      swayM: xM && highest(onTheWay(xM)) - lowest(onTheWay(xM)),
      gapS: longestGapS(points, fromS, toS),
    },
  ];
}

/**
 * The leg without the rest at either end: from the last to the next standstill around the part under way, as places
 * between the readings.
 */
function underWay({ from, to }: Leg, { zM, speedMps, stillMps }: EvenSpeeds): { from: number; to: number } {
  const marginM = UNDER_WAY_SHARE * (zM[to]! - zM[from]!);
  let first = from;
  while (zM[first]! < zM[from]! + marginM) first++;
  while (first > from && speedMps[first]! > stillMps) first--;
  let last = to;
  while (zM[last]! > zM[to]! - marginM) last--;
  while (last < to && speedMps[last]! > stillMps) last++;
  /** How far from one place to its neighbour under way the speed passes that of standing. */
  const share = (standing: number, moving: number) => {
    const gained = speedMps[moving]! - speedMps[standing]!;
    return gained > 0 ? Math.min(1, Math.max(0, (stillMps - speedMps[standing]!) / gained)) : 0;
  };
  return { from: first + share(first, first + 1), to: last - share(last, last - 1) };
}

/** A value between two readings, on a straight line. */
function between(values: Float64Array, place: number): number {
  const low = Math.floor(place);
  const value = values[low]!;
  return value + (place - low) * ((values[low + 1] ?? value) - value);
}

function longestGapS(points: readonly TrackPoint[], fromS: number, toS: number): number {
  return points.slice(1).reduce((longest, { tS }, i) => {
    const beforeS = points[i]!.tS;
    return tS > fromS && beforeS < toS ? Math.max(longest, tS - beforeS) : longest;
  }, 0);
}

function middle(values: number[]): number {
  values.sort((a, b) => a - b);
  const half = (values.length - 1) / 2;
  return (values[Math.floor(half)]! + values[Math.ceil(half)]!) / 2;
}

function highest(values: Float64Array): number {
  return values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
}

function lowest(values: Float64Array): number {
  return values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
}
