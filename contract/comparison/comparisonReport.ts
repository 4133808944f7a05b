import { z } from 'zod';

const n = z.number();
const count = z.int();
const date = z.iso.date();

/** The middle of what is believed, and the ranges that hold it with 80 and 95 %, in % of the load. */
const percentRange = z.strictObject({ value: n, low80: n, high80: n, low95: n, high95: n });
export type PercentRange = z.infer<typeof percentRange>;

/** What became of a comparison of two ways. Everybody counts by the way drawn. */
export const comparisonReport = z.strictObject({
  startsOn: date,
  endsOn: date,
  /** The newest test that counts; null: none. */
  lastTestOn: date.nullable(),
  /** Up to which day gains and difference are told: the last one, or of a comparison that goes on that of the newest test. */
  toldTo: date,
  ways: z.array(
    z.strictObject({
      way: z.string(),
      drawn: count,
      /** Lifters with tests on different days, who tell of a gain. */
      telling: count,
      /** Mean gain up to then; null where there is too little to say. */
      gain_percent: percentRange.nullable(),
    }),
  ),
  /** The second way's gain less the first's. */
  difference_percent: percentRange.nullable(),
  degreesOfFreedom: count.nullable(),
  /** Who left before the end, or has no test near it, each with the last day that counts; null: no test at all. */
  leftEarly: z.array(
    z.strictObject({
      lifterId: z.string(),
      name: z.string(),
      way: z.string(),
      takenOut: z.boolean(),
      lastOn: date.nullable(),
    }),
  ),
});
export type ComparisonReport = z.infer<typeof comparisonReport>;
