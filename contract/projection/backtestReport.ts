import { z } from 'zod';
import { liftProjection } from '#contract/projection/liftProjection.ts';
import { equipment, lift } from '#contract/records/lift.ts';

const n = z.number();
const count = z.number().int().nonnegative();
const date = z.iso.date();

/** One lift at one past meet: what was foretold from what was known the day before, and what came. */
const foretoldLift = z.strictObject({
  lifterId: z.string(),
  lift,
  equipment,
  on: date,
  place: z.string(),
  /** Sets that were known of this lift; the forecast rests on them. */
  setCount: count,
  maxKg: liftProjection.shape.maxKg,
  bestSoFarKg: n.nullable(),
  ruleKg: n.nullable(),
  madeKg: n.nullable(),
  missedKg: n.nullable(),
  /** The forecast's probability that the maximum lies below the best made, and below the lightest missed above it (1: none). */
  placed: z.strictObject({ low: n, high: n }),
  attempts: z.array(z.strictObject({ barKg: n, made: z.boolean(), chance: n })),
});
export type ForetoldLift = z.infer<typeof foretoldLift>;

const coverageLine = z.strictObject({
  share: n,
  held: n,
  least: n,
  most: n,
  /** Share of the best made lifts themselves that lay within. */
  heldMade: n,
});

/** Foretold less made: mean, mean size, in kg and as a share of what was made; null without lifts. */
const errors = z.strictObject({ count, meanKg: n, meanAbsKg: n, meanShare: n, meanAbsShare: n }).nullable();
export type Errors = z.infer<typeof errors>;

const ways = <T extends z.ZodType>(shape: T) =>
  z.strictObject({ estimate: shape, bestSoFar: shape, rule: shape });

/** The score of some of the lifts. */
const backtestScore = z.strictObject({
  of: z.enum(['all', 'squat', 'bench', 'deadlift', 'raw', 'equipped']),
  lifts: count,
  lifters: count,
  coverage: z.array(coverageLine),
  /** Each by its own lifts, and by those for which all three say something. */
  errors: ways(errors),
  errorsTogether: ways(errors),
});
export type BacktestScore = z.infer<typeof backtestScore>;

export const backtestReport = z.strictObject({
  /** Days of the first and last meet; null without any. */
  from: date.nullable(),
  to: date.nullable(),
  meets: count,
  /** Lifts of which nothing was known before. */
  unforetold: count,
  lifts: z.array(foretoldLift),
  scores: z.array(backtestScore),
  /** Fifths of the forecasts' probability in which the truths lay: a fifth each if the forecasts are right. */
  fifths: z.array(n),
  attempts: z.strictObject({
    count,
    bins: z.array(z.strictObject({ from: n, to: n, count, expected: n, made: count })),
    /** Mean squared distance of the chance from what came; the two rules say 1 up to their bar and 0 above. */
    brier: ways(n.nullable()),
    /** Attempts for which all three say something. */
    brierCount: count,
  }),
});
export type BacktestReport = z.infer<typeof backtestReport>;
