import type { Belief } from '#contract/strength/strengthEstimate.ts';
import { signedText } from '#contract/words/signedText.ts';
import { repCost } from '#core/effort/repCost.ts';
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
  /** It only sets right what is worked out, and tells a coach nothing to train by. */
  onlyForModel?: true;
  /** What it means for training, one sentence. */
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
        ...plain('Top speed, hardly any weight', 'm/s', 2),
        meaning: 'The higher it is, the faster light bars move; it says little about heavy ones.',
        read: (value) => shape.maxSpeedMps * Math.exp(value),
      };
    case 'slope':
      return {
        ...plain('Strength at the top', '%', 0),
        signed: true,
        meaning:
          'At lockout, compared with what is usual for the strength at the bottom: the higher it is, the less weight bands and chains take off the bar. Where misses stop, high or low, counts too.',
        read: percentMore,
      };
    case 'lnRebound':
      if (shape.rebound === 0) return null;
      return {
        ...plain('Help from the bounce at the bottom', '%', 0),
        meaning:
          'Force that turning round without a pause adds for a moment; paused work and a box take most of it away.',
        read: (value) => 100 * shape.rebound * Math.exp(value),
      };
    case 'heldRebound':
      return heldRebound(lift);
    case 'lnTiring':
      return {
        ...plain('Strength lost per second', '%', 1),
        meaning:
          'In all-out effort: the less is lost, the more reps a set allows at the same share of the maximum.',
        read: (value) => 100 * tiringOf(lift).perSecond * Math.exp(value),
      };
    case 'tiringBend':
      return {
        ...plain('The fifth rep of a set, against the first', '%', 0),
        onlyForModel: true,
        signed: true,
        meaning: 'How much more, or less, a fifth rep takes out of this lifter than the first does.',
        read: (value) => 100 * (repCost(5, value) / repCost(1, value) - 1),
      };
    case 'bandError':
      return {
        ...plain('With bands, against what is worked out', '%', 0),
        signed: true,
        meaning:
          'How much more, or less, banded sets show than straight sets would suggest, if all of the load were band.',
        read: percentMore,
      };
    case 'startError':
      return {
        ...plain('Off box, pins, boards or blocks, against what is worked out', '%', 0),
        signed: true,
        meaning: 'How much more, or less, those starts show than the full lift would suggest.',
        read: percentMore,
      };
    case 'speedOffset':
      return {
        ...plain('Measured speeds, against what is worked out', 'm/s', 2),
        onlyForModel: true,
        signed: true,
        meaning: 'The device or the lifter makes every bar look this much faster, or slower.',
        read: (value) => value,
      };
    case 'speedSlope':
      return {
        ...plain('Speeds of light bars, against what is worked out', 'm/s', 2),
        onlyForModel: true,
        signed: true,
        meaning: 'How much faster, or slower, a bar of about two thirds of the maximum moves.',
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
        ...plain('At a meet, against the gym', '%', 1),
        signed: true,
        meaning: 'What a meet brings on top of an average training day.',
        read: percentMore,
      };
    case 'weekGain':
      return {
        ...plain('Strength gained per month', '%', 1),
        signed: true,
        meaning: 'On average over the whole log.',
        read: (value) => percentMore(value * WEEKS_A_MONTH),
      };
    case 'lnDaySd':
      return {
        ...plain('Good and bad days', '%', 1),
        meaning:
          'Two days in three are within this much of the average day: when a bar is this much too heavy, it may just be the day.',
        read: (value) => 100 * DAY_SD * Math.exp(value),
      };
    case 'lnWeekSd':
      return {
        ...plain('Drift from week to week', '%', 2),
        onlyForModel: true,
        meaning: 'How far strength wanders from one week to the next, on top of its average gain.',
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
  return signedText(value, { decimals, plus: signed });
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
    meaning: 'In per cent of bar and lifter together, compared with raw.',
    read: percentMore,
  };
}

/** The start that breaks the rebound in each lift; a deadlift has none to break. */
function heldRebound(lift: Lift): LearnedNumber | null {
  if (lift === 'deadlift') return null;
  const usual = reboundShare(lift === 'squat' ? 'box' : 'paused');
  const where = lift === 'squat' ? 'off the box' : 'after the pause';
  return {
    ...plain(`Bounce left ${where}`, '%', 0),
    meaning: `Share of the bounce of a free start that still helps ${where}.`,
    read: (value) => 100 / (1 + ((1 - usual) / usual) * Math.exp(-value)),
  };
}
