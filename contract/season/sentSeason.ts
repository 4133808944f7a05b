import { z } from 'zod';
import { askedPlan, clubSeason } from './clubSeason.ts';
import { seasonOffer, takenSeason } from './seasonOffer.ts';
import { plannedWeek } from './seasonPlan.ts';

/** A season as it travels: a week that several plans have stands in it once, and each plan names its weeks by their places (`sentWeeks.ts`). */
export const sentSeason = clubSeason.extend({
  weeks: z.array(plannedWeek),
  plans: z.array(askedPlan.extend({ weeks: z.array(z.number().int()) })),
});
export type SentSeason = z.infer<typeof sentSeason>;

export const sentOffer = seasonOffer.extend({ plan: sentSeason });
export type SentOffer = z.infer<typeof sentOffer>;

export const sentTaken = takenSeason.extend({ plan: sentSeason.nullable() });
export type SentTaken = z.infer<typeof sentTaken>;
