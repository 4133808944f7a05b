import type { Method } from '#contract/records/method.ts';
import { percent } from '#contract/words/percent.ts';
import type { PlannedWeek } from './seasonPlan.ts';
import { workText } from './workSentence.ts';

/** One figure of what a week comes to: what it is, the number as it is written, and what has to be known of it. */
export interface LoadFigure {
  word: string;
  figure: string;
  says: string;
}

/** What a week comes to, against the limits of its method where it has some. */
export function loadFigures(
  { lifts, meanShare, heavyLifts, monotony, sledWorkJ }: PlannedWeek['load'],
  { mostHeavyLiftsAWeek }: Method['limits'],
): LoadFigure[] {
  const figures: LoadFigure[] = [
    { word: 'lifts', figure: String(lifts), says: 'of all lifts that name a share, work-up sets included' },
  ];
  if (meanShare !== null)
    figures.push({
      word: 'on average',
      figure: percent(meanShare),
      says: 'of the maximum, over the range of the lift, bands counted',
    });
  figures.push({
    word: 'heavy lifts',
    figure: String(heavyLifts),
    says:
      mostHeavyLiftsAWeek === null
        ? 'at 90 % or more at lockout'
        : `at 90 % or more at lockout; the method allows ${mostHeavyLiftsAWeek}`,
  });
  if (monotony !== null)
    figures.push({
      word: 'monotony',
      figure: monotony.toFixed(1),
      says: 'how alike the days are: their mean load over its spread, rest days counted (Foster 1998). A rule of thumb; whether such ratios foretell injuries is disputed (Impellizzeri et al. 2020).',
    });
  if (sledWorkJ > 0)
    figures.push({
      word: 'sled',
      figure: workText(sledWorkJ),
      says: 'mechanical work: friction times weight times way',
    });
  return figures;
}
