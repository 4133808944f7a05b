import { z } from 'zod';

/**
 * What a proposal keeps to whatever its aim, as shares of the lifter's reference maximum; what is set by hand is free.
 * The defaults are common practice, no source: no less than 40 % on the bar; where bands hang at all, 25 to 45 % of
 * them at lockout; three pairs, which a sleeve holds beside its discs. `strengthChance`: the strength gone by is one that the
 * lifter has with at least this chance; 0.75 takes a bar too heavy to be three times as bad as one too light by as much
 * (judgement).
 */
export const bounds = z.strictObject({
  leastBarShare: z.number().min(0).max(1).default(0.4),
  leastBandShare: z.number().min(0).max(1).default(0.25),
  mostBandShare: z.number().min(0).max(2).default(0.45),
  mostPairs: z.number().int().min(0).max(3).default(3),
  strengthChance: z.number().min(0.5).max(0.95).default(0.75),
});
export type Bounds = z.infer<typeof bounds>;

/** The defaults. */
export const usualBounds: Bounds = bounds.parse({});
