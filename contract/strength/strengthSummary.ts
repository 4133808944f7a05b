import { z } from 'zod';
import { strengthEstimate } from './strengthEstimate.ts';

/** What a list shows of an estimate. */
export const strengthSummary = strengthEstimate
  .pick({ lifterId: true, lift: true, on: true, setCount: true, lastSetOn: true, maxKg: true })
  .extend({
    /** False while something it rests on has changed since, and the new one is not there yet. */
    upToDate: z.boolean(),
  });
export type StrengthSummary = z.infer<typeof strengthSummary>;

/** How far the estimates of the whole club are. */
export const estimateProgress = z.strictObject({
  done: z.number().int().nonnegative(),
  total: z.number().int().nonnegative(),
  running: z.boolean(),
});
export type EstimateProgress = z.infer<typeof estimateProgress>;
