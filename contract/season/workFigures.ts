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
      says: 'bars times reps: what hangs on them is not in it',
    },
    {
      word: 'work',
      figure: workText(workJ),
      says: `of all ways up, bands counted as they pull; ${howKnown(known)}`,
    },
    ...(underBarS === null
      ? []
      : [
          {
            word: 'under the bar',
            figure: timeText(underBarS),
            says: 'ways up and down without the rest between; estimated, by how fast the model takes each bar to go',
          },
        ]),
  ];
}

/** "4 groups by their bars and bands, 2 estimated by their shares, of 1 nothing can be said". */
function howKnown({ workedOut, estimated, unknown }: WorkKnown): string {
  return [
    ...(workedOut > 0 ? [`${counted(workedOut, 'group')} by bar and bands`] : []),
    ...(estimated > 0
      ? [`${counted(estimated, 'group')} estimated by the shares of the maximum of today`]
      : []),
    ...(unknown > 0 ? [`of ${counted(unknown, 'group')} nothing can be said and they are left out`] : []),
  ].join(', ');
}
