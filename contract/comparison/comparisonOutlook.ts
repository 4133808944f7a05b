import { z } from 'zod';
import { comparisonPlan } from '#contract/records/comparisonPlan.ts';

const somebody = comparisonPlan.shape.drawn.element.pick({ lifterId: true, name: true });

/**
 * What could be seen of a comparison, and who would be paired with whom. Who would get which way is not in it: a coach who sees that could ask
 * until it pleases.
 */
export const comparisonOutlook = comparisonPlan.omit({ seed: true, drawn: true }).extend({
  pairs: z.array(z.array(somebody).length(2)),
  alone: z.array(somebody),
  sentences: z.array(z.string()),
  cautions: z.array(z.string()),
});
export type ComparisonOutlook = z.infer<typeof comparisonOutlook>;
