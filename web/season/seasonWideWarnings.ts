import { closedDaysSentence } from '#contract/season/closedDaysSentence.ts';
import type { SeasonWarning } from '#contract/season/seasonPlan.ts';
import { seasonWarningSentence } from '#contract/season/seasonWarningSentence.ts';
import type { SeasonView } from './SeasonView.ts';

/** One sentence and the lifters whom it holds for. */
export interface SharedWarning {
  sentence: string;
  names: readonly string[];
}

/** Every warning of a season once, the earliest first, those of no week in particular before them. */
export function seasonWideWarnings({ lifters }: Pick<SeasonView, 'lifters'>): SharedWarning[] {
  const found = new Map<string, { on: string; names: string[] }>();
  for (const { lifter, warnings } of lifters)
    for (const { on, sentence } of warningSentences(warnings)) {
      const shared = found.get(sentence) ?? { on, names: [] };
      shared.names.push(lifter.name);
      found.set(sentence, shared);
    }
  return [...found]
    .sort(([, a], [, b]) => a.on.localeCompare(b.on))
    .map(([sentence, { names }]) => ({ sentence, names }));
}

/** Warnings in words, days that fall out for the same reason together. */
export function warningSentences(warnings: readonly SeasonWarning[]): { on: string; sentence: string }[] {
  const closed = new Map<string, string[]>();
  for (const warning of warnings)
    if (warning.code === 'closedDay')
      closed.set(warning.why, [...(closed.get(warning.why) ?? []), warning.date]);
  return [
    ...warnings
      .filter(({ code }) => code !== 'closedDay')
      .map((warning) => ({ on: dayOf(warning), sentence: seasonWarningSentence(warning) })),
    ...[...closed].map(([why, dates]) => ({ on: dates[0]!, sentence: closedDaysSentence(dates, why) })),
  ].sort((a, b) => a.on.localeCompare(b.on));
}

function dayOf(warning: SeasonWarning): string {
  if ('date' in warning) return warning.date;
  return 'monday' in warning ? warning.monday : '';
}
