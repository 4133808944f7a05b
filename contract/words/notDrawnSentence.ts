import type { ComparisonPlan, NotDrawnReason } from '#contract/records/comparisonPlan.ts';

/** Who is not drawn for a comparison, and why. */
export function notDrawnSentence({ name, reason }: ComparisonPlan['notDrawn'][number]): string {
  return `${name} is not drawn: ${reasons[reason]}.`;
}

const reasons: Record<NotDrawnReason, string> = {
  takenOut: 'taken out by you',
  ageNotKnown: 'the date of birth is not known',
  minor: 'not of age on the first day',
  restricted: 'held to a restriction on the first day',
};
