import type { ComparisonOutlook } from '#contract/comparison/comparisonOutlook.ts';
import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import { compareText } from '#core/numeric/compareText.ts';
import type { PlannedComparison } from './plannedComparison.ts';

/** What is told of a plan before the draw: who with whom, and never who by which way. */
export function comparisonOutlook({ plan, sentences, cautions }: PlannedComparison): ComparisonOutlook {
  const { drawn, seed: _seed, ...told } = plan;
  const numbers = [...new Set(drawn.flatMap(({ pair }) => pair ?? []))];
  return {
    ...told,
    pairs: numbers.map((number) => inOrder(drawn.filter(({ pair }) => pair === number))),
    alone: inOrder(drawn.filter(({ pair }) => pair === null)),
    sentences,
    cautions,
  };
}

/** By name, so that the order tells nothing. */
function inOrder(some: ComparisonPlan['drawn']) {
  return some
    .map(({ lifterId, name }) => ({ lifterId, name }))
    .toSorted((a, b) => compareText(a.name, b.name));
}
