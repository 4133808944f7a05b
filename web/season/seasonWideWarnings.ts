import { warningSentences } from '#contract/season/warningSentences.ts';
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
