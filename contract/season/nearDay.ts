import { z } from 'zod';
import { planGroup } from '#contract/day/dayPlan.ts';
import { planWords } from '#contract/day/planWords.ts';
import { localDate } from '#contract/records/kind.ts';

/** One lifter's part of a group of a near day, worked out to bar and bands as the Day screen would with what is known today. */
export const nearWork = planGroup.pick({ title: true, lift: true, aim: true }).extend({
  /** The group of the method. */
  askedId: z.string(),
  place: planGroup.shape.places.element,
});
export type NearWork = z.infer<typeof nearWork>;

/** A near day of one lifter. */
export const nearDay = z.strictObject({
  date: localDate,
  gravityMps2: z.number(),
  /** How its gear is called and drawn. */
  words: planWords,
  works: z.array(nearWork),
  /** Groups, by their titles, that no rack of the club takes. */
  noRack: z.array(z.string()),
});
export type NearDay = z.infer<typeof nearDay>;
