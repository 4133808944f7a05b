import { closedDaysSentence } from './closedDaysSentence.ts';
import type { SeasonWarning } from './seasonPlan.ts';
import { seasonWarningSentence } from './seasonWarningSentence.ts';

/** Warnings in words, days without training for the same reason together. */
export function warningSentences(warnings: readonly SeasonWarning[]): { on: string; sentence: string }[] {
  const closed = new Map<string, string[]>();
  for (const warning of warnings)
    if (warning.code === 'closedDay')
      closed.set(warning.why, [...(closed.get(warning.why) ?? []), warning.date]);
  return [
    ...warnings
      .filter(({ code }) => code !== 'closedDay')
      .map((warning) => ({ on: dayOfWarning(warning), sentence: seasonWarningSentence(warning) })),
    ...[...closed].map(([why, dates]) => ({ on: dates[0]!, sentence: closedDaysSentence(dates, why) })),
  ].sort((a, b) => a.on.localeCompare(b.on));
}

/** The day, or the Monday, that a warning tells of; empty where it is of the whole season. */
export function dayOfWarning(warning: SeasonWarning): string {
  if ('date' in warning) return warning.date;
  return 'monday' in warning ? warning.monday : '';
}
