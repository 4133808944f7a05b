import { z } from 'zod';
import { takenPlan } from '#contract/records/takenPlan.ts';
import { clubSeason } from './clubSeason.ts';
import { lifterDifference } from './planDifferences.ts';

/** A plan that was taken, without what it says. */
export const takenHead = takenPlan.omit({ document: true });
export type TakenHead = z.infer<typeof takenHead>;

/** A season as the records ask for it now, beside the plan that was taken last. */
export const seasonOffer = z.strictObject({
  /** What is past is as it was taken. */
  plan: clubSeason,
  /** Oldest first; the last one holds. */
  taken: z.array(takenHead),
  /** From today on; none where nothing was taken yet. */
  differences: z.array(lifterDifference),
});
export type SeasonOffer = z.infer<typeof seasonOffer>;

/** What is taken: the season as it is now (null), or a plan that was taken before. */
export const takingAsked = z.strictObject({ again: takenPlan.shape.number.nullable().default(null) });

/** A plan as it was taken; null where an older program wrote one that cannot be read here. */
export const takenSeason = takenHead.extend({ plan: clubSeason.nullable() });
export type TakenSeason = z.infer<typeof takenSeason>;
