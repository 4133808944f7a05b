import { z } from 'zod';

/** Who makes a change, as the log of changes keeps it; said by whoever opens the club, not proven. */
export const who = z.strictObject({
  /** As it stands in a sentence: "the coach at this computer". */
  name: z.string().min(1).max(60),
});
export type Who = z.infer<typeof who>;
