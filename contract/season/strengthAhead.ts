import { z } from 'zod';
import { localDate } from '#contract/records/kind.ts';
import { lift } from '#contract/records/lift.ts';

const between = { lowKg: z.number(), highKg: z.number() };
/** Between what something lies, 80 times of 100 (kg). */
const kgRange = z.strictObject(between);
export type KgRange = z.infer<typeof kgRange>;

/** Between what the maximum of a lift lies some week: straight, in the lifter's equipment, on an average rested day. */
export const maximumInWeek = z.strictObject({
  monday: localDate,
  ...between,
  /** What can just be held on the bar then at both ends of the full range; null: heights are not known. */
  held: z.strictObject({ bottom: kgRange, lockout: kgRange }).nullable(),
});
export type MaximumInWeek = z.infer<typeof maximumInWeek>;

/** How strong one lifter may be in the weeks ahead, by what is known today. */
export const strengthAhead = z.strictObject({
  lifterId: z.string(),
  /** Of the lifts of which something is known; weeks that are too far ahead are left out. */
  lifts: z.array(z.strictObject({ lift, weeks: z.array(maximumInWeek) })),
});
export type StrengthAhead = z.infer<typeof strengthAhead>;
