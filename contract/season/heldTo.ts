import { z } from 'zod';
import { localDate } from '#contract/records/kind.ts';
import { restriction } from '#contract/records/lifters.ts';
import { startAsked } from '#contract/records/method.ts';

const { lift, leastBoxM, mostShare, shareOf } = restriction.shape.shape;

/** What a lifter is held to in a lift for a while, as far as a plan goes by it. */
export const heldTo = z.strictObject({
  lift,
  from: localDate,
  /** Null: until further notice. */
  until: localDate.nullable(),
  /** Starts of the method that are too deep for this lifter. */
  tooDeep: z.array(startAsked),
  leastBoxM: leastBoxM.removeDefault(),
  mostShare: mostShare.removeDefault(),
  shareOf: shareOf.removeDefault(),
});
export type HeldTo = z.infer<typeof heldTo>;
