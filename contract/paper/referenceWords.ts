import type { Reference } from '#contract/day/dayPlan.ts';
import { dateText } from '#contract/words/dateText.ts';

/**
 * Where the maximum that percentages refer to comes from: only what was lifted is a best; what is worked out from one, or by
 * the log, is an estimate, and what no lift told is assumed. `mass` writes a mass with its unit.
 */
export function referenceWords(
  { from, doneOn, loweredFromKg }: Reference,
  mass: (kg: number) => string,
): string {
  const stands = loweredFromKg === null ? '' : ` (${mass(loweredFromKg)})`;
  const best = doneOn === null ? `best${stands}` : `best on ${dateText(doneOn)}${stands}`;
  switch (from) {
    case 'best':
      return stands === '' ? best : `est. from the ${best}`;
    case 'model':
      return doneOn === null ? `assumed from body mass${stands}` : `est. from the ${best}`;
    case 'log':
      return stands === '' ? 'est. from the log' : `est. from the log, below the ${best}`;
  }
}
