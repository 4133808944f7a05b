import type { Belief } from '#contract/strengthEstimate.ts';
import { tiringOf } from '#core/effort/Tiring.ts';
import { reboundShare } from '#core/lifter/lifterCapability.ts';
import { type Lift, populationShape } from '#core/lifter/populationShape.ts';
import { DAY_SD, type ParameterName, WEEK_SD } from '#core/strength/parameters.ts';

/** A learned number as a coach reads it: what it is, in which unit, and what more of it means. */
export interface LearnedNumber {
  title: string;
  unit: 'm/s' | '%' | '';
  decimals: number;
  /** A change: written with its sign. */
  signed: boolean;
  /** What it tells, one sentence. */
  meaning: string;
  /** From the scale of core/strength/parameters.ts to the unit; rising. */
  read: (value: number) => number;
}

/** ln strength to spare with about two thirds of a maximum on the bar. */
const LIGHT_SURPLUS = 0.4;

/** How each learned parameter of a lift is said; null for one that has no meaning in it. */
export function learnedNumber(lift: Lift, name: ParameterName): LearnedNumber | null {
  const shape = populationShape(lift);
  switch (name) {
    case 'lnMaxSpeed':
      return {
        ...plain('Top speed', 'm/s', 2),
        meaning: 'How fast the bar would move with nothing on it: the speed end of this lifter.',
        read: (value) => shape.maxSpeedMps * Math.exp(value),
      };
    case 'slope':
      return {
        ...plain('Strength towards lockout', '%', 0),
        signed: true,
        meaning: 'How much more, or less, than is usual is held at lockout, for what is held at the bottom.',
        read: percentMore,
      };
    case 'lnRebound':
      if (shape.rebound === 0) return null;
      return {
        ...plain('Rebound out of the bottom', '%', 0),
        meaning: 'Force that turning round adds for a moment, without a pause.',
        read: (value) => 100 * shape.rebound * Math.exp(value),
      };
    case 'heldRebound':
      return heldRebound(lift);
    case 'lnTiring':
      return {
        ...plain('Tiring', '%', 1),
        meaning: 'Strength lost for each second of all-out effort: less of it is more work capacity.',
        read: (value) => 100 * tiringOf(lift).perSecond * Math.exp(value),
      };
    case 'bandError':
      return {
        ...plain('Bands against straight weight', '%', 0),
        signed: true,
        meaning: 'What banded sets show more, or less, than straight ones, if all of the load were band.',
        read: percentMore,
      };
    case 'startError':
      return {
        ...plain('Other starts against the full lift', '%', 0),
        signed: true,
        meaning: 'What box, pins, boards or blocks show more, or less, than is worked out for them.',
        read: percentMore,
      };
    case 'speedOffset':
      return {
        ...plain('Speed against the usual', 'm/s', 2),
        signed: true,
        meaning: 'How much faster, or slower, bars are measured than is worked out.',
        read: (value) => value,
      };
    case 'speedSlope':
      return {
        ...plain('Speed with light bars', 'm/s', 2),
        signed: true,
        meaning: 'How much faster, or slower, than is worked out a bar of about two thirds is moved.',
        read: (value) => LIGHT_SURPLUS * value,
      };
    case 'wraps':
      return equipmentAdds('Knee wraps add');
    case 'singlePly':
      return equipmentAdds('Single-ply adds');
    case 'multiPly':
      return equipmentAdds('Multi-ply adds');
    case 'otherGear':
      return equipmentAdds('Other supportive gear adds');
    case 'platform':
      return {
        ...plain('Platform against gym', '%', 1),
        signed: true,
        meaning: 'What a meet brings over an average day in the gym.',
        read: percentMore,
      };
    case 'weekGain':
      return {
        ...plain('Gain in a month', '%', 1),
        signed: true,
        meaning: 'What strength has grown by on average over the whole log.',
        read: (value) => percentMore(value * WEEKS_A_MONTH),
      };
    case 'lnDaySd':
      return {
        ...plain('Day-to-day scatter', '%', 1),
        meaning: 'Two days in three lie within this much of the average day, either way.',
        read: (value) => 100 * DAY_SD * Math.exp(value),
      };
    case 'lnWeekSd':
      return {
        ...plain('Drift in a week', '%', 2),
        meaning: 'How far strength wanders from one week to the next beside its average gain.',
        read: (value) => 100 * WEEK_SD * Math.exp(value),
      };
  }
}

/** A belief on another rising scale: quantiles stay quantiles. */
export function readBelief(belief: Belief, read: (value: number) => number): Belief {
  return {
    median: read(belief.median),
    low80: read(belief.low80),
    high80: read(belief.high80),
    low95: read(belief.low95),
    high95: read(belief.high95),
  };
}

/** "1.42", "+3", "−0.5": as the number is written, without its unit. */
export function learnedText({ decimals, signed }: LearnedNumber, value: number): string {
  const digits = Math.abs(value).toFixed(decimals);
  const nothing = Number(digits) === 0;
  const sign = value < 0 && !nothing ? '−' : signed && !nothing ? '+' : '';
  return `${sign}${digits}`;
}

const WEEKS_A_MONTH = 365.25 / 12 / 7;

function percentMore(ln: number): number {
  return 100 * (Math.exp(ln) - 1);
}

function plain(title: string, unit: LearnedNumber['unit'], decimals: number) {
  return { title, unit, decimals, signed: false };
}

function equipmentAdds(title: string): LearnedNumber {
  return {
    ...plain(title, '%', 0),
    signed: true,
    meaning: 'Of bar and lifter together, over raw.',
    read: percentMore,
  };
}

/** The start that breaks the rebound in each lift; a deadlift has none to break. */
function heldRebound(lift: Lift): LearnedNumber | null {
  if (lift === 'deadlift') return null;
  const usual = reboundShare(lift === 'squat' ? 'box' : 'paused');
  const where = lift === 'squat' ? 'off the box' : 'after the pause';
  return {
    ...plain(`Rebound left ${where}`, '%', 0),
    meaning: `Share of the rebound of a free start that is left ${where}.`,
    read: (value) => 100 / (1 + ((1 - usual) / usual) * Math.exp(-value)),
  };
}
