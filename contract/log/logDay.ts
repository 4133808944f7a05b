import { z } from 'zod';
import { localDate } from '#contract/records/kind.ts';

/** What the log holds of one day, summed up. */
export const logDay = z.strictObject({
  doneOn: localDate,
  /** How many lifters did any. */
  lifters: z.int().min(1),
  /** How many sets count. */
  sets: z.int().min(0),
  /** Of these, with a rep that was missed. */
  missed: z.int().min(0),
  struck: z.int().min(0),
});
export type LogDay = z.infer<typeof logDay>;

/** Days of the log, the newest first, and whether there are older ones. */
export const logDays = z.strictObject({ days: z.array(logDay), hasOlder: z.boolean() });
export type LogDays = z.infer<typeof logDays>;
