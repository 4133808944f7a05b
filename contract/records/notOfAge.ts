import { isMinor } from '#contract/calendar/isMinor.ts';
import type { NotDrawnReason } from './comparisonPlan.ts';

/** Why somebody's age keeps them from being drawn for a comparison that begins on that day; null: it does not. */
export function notOfAge(bornOn: string | null, startsOn: string): NotDrawnReason | null {
  if (bornOn === null) return 'ageNotKnown';
  return isMinor(bornOn, startsOn) ? 'minor' : null;
}
