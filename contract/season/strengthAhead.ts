import { z } from 'zod';
import { localDate } from '#contract/records/kind.ts';
import { lift } from '#contract/records/lift.ts';

/** Between what the maximum of a lift lies some week, 80 times of 100: kg, straight, in the lifter's equipment, on an average rested day. */
export const maximumInWeek = z.strictObject({ monday: localDate, lowKg: z.number(), highKg: z.number() });
export type MaximumInWeek = z.infer<typeof maximumInWeek>;

/** How strong one lifter may be in the weeks ahead, by what is known today. */
export const strengthAhead = z.strictObject({
  lifterId: z.string(),
  /** Of the lifts of which something is known; weeks that are too far ahead are left out. */
  lifts: z.array(z.strictObject({ lift, weeks: z.array(maximumInWeek) })),
});
export type StrengthAhead = z.infer<typeof strengthAhead>;
