import { z } from 'zod';
import { recordId } from './kind.ts';

/** What was solved for a day, as it was given to the lifters. A later solving is added; this one stays. */
export const prescription = z.strictObject({
  id: recordId,
  dayId: recordId,
  /** Counts 1, 2, 3 ... within the day. */
  number: z.number().int().min(1),
  solvedAt: z.iso.datetime(),
  /** The day's plan as it was computed then; kept as it is. */
  document: z.unknown(),
});
export type Prescription = z.infer<typeof prescription>;
