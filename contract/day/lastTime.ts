import { z } from 'zod';
import { recordId } from '#contract/records/kind.ts';
import { loggedSet } from '#contract/records/loggedSet.ts';

/** What a lifter of a group did the last time before a day: sets alike in setup, bar and reps, oldest first. */
export const lastTime = z.strictObject({
  groupId: z.string(),
  lifterId: recordId,
  sets: z.array(loggedSet).min(1),
  /** True loads of the first of them at both ends of the way; null: gear or heights of then are no longer kept. */
  bottomKg: z.number().nullable(),
  lockoutKg: z.number().nullable(),
});
export type LastTime = z.infer<typeof lastTime>;
