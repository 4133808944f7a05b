import { counted } from '#contract/words/counted.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import type { LoadFigure } from './loadFigures.ts';
import type { WorkKnown } from './sessionWork.ts';
import { liftedText, timeText, workText } from './workSentence.ts';

/** What the bars of one lifter's week come to, and how it is known. */
export function workFigures(known: WorkKnown, mass: MassUnit): LoadFigure[] {
  const { liftedKg, workJ, underBarS } = known.work;
  if (workJ === 0) return [];
  return [
    {
      word: 'lifted',
      figure: liftedText(liftedKg, mass),
      says: 'bars times reps, without bands and chains',
    },
    {
      word: 'work',
      figure: workText(workJ),
      says: `of lifting every rep, bands counted as they pull; ${howKnown(known)}`,
    },
    ...(underBarS === null
      ? []
      : [
          {
            word: 'under the bar',
            figure: timeText(underBarS),
            says: 'up and down, without the rest between; estimated from how fast the model expects each bar to move',
          },
        ]),
  ];
}

/** "4 groups by their bars and bands, 2 estimated by their shares, of 1 nothing can be said". */
function howKnown({ workedOut, estimated, unknown }: WorkKnown): string {
  return [
    ...(workedOut > 0 ? [`${counted(workedOut, 'group')} by bar and bands`] : []),
    ...(estimated > 0 ? [`${counted(estimated, 'group')} estimated from shares of today's maximum`] : []),
    ...(unknown > 0 ? [`${counted(unknown, 'group')} left out, since nothing can be said of the work`] : []),
  ].join(', ');
}
