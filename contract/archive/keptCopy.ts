import { z } from 'zod';

/** A copy of the whole club that is kept beside it. */
export const keptCopy = z.strictObject({
  /** The name of its file, by which it is asked for. */
  name: z.string(),
  /** Taken while the program ran, or what was there until another club took its place. */
  kind: z.enum(['snapshot', 'replaced']),
  /** The moment as which it holds the club. */
  takenAt: z.iso.datetime(),
  bytes: z.number().int().nonnegative(),
});
export type KeptCopy = z.infer<typeof keptCopy>;

/** All copies, newest first, and how snapshots go. */
export const keptCopies = z.strictObject({
  copies: z.array(keptCopy),
  /** Where snapshots are put, on the machine that runs the program. */
  folder: z.string(),
  /** Why the last snapshot could not be taken, as one sentence; null: nothing went wrong. */
  fault: z.string().nullable(),
});
export type KeptCopies = z.infer<typeof keptCopies>;
