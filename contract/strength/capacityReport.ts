import { z } from 'zod';
import { lift } from '#contract/records/lift.ts';
import { belief } from './strengthEstimate.ts';

/** Work capacity of one lifter in one lift over the season, stretch by stretch. */
export const capacityReport = z.strictObject({
  lifterId: z.string(),
  lift,
  /** Oldest first, one after the other. */
  stretches: z.array(
    z.strictObject({
      from: z.iso.date(),
      to: z.iso.date(),
      /** Sets of several reps or with reps left, which tell how strength is lost within a set. */
      setsThatTell: z.number().int().nonnegative(),
      /** What they tell by themselves; null where that is too little. */
      told: z
        .strictObject({
          lnTiring: belief,
          /** Reps of a rested set of straight weight at a share of the maximum, with the part of the next one. */
          reps: z.array(z.strictObject({ share: z.number(), belief })),
        })
        .nullable(),
    }),
  ),
  /** Probability that capacity is better in the newest stretch that tells than in the oldest; null: fewer than two tell. */
  better: z.number().nullable(),
  /** What that probability says: silent where it cannot tell. */
  change: z.enum(['rose', 'fell', 'cannotTell']),
});
export type CapacityReport = z.infer<typeof capacityReport>;
