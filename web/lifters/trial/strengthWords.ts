import type { ClubRecords } from '#contract/records/allKinds.ts';
import { equipmentWord, startText } from '#web/parts/liftWords.ts';
import { dateText } from '#web/parts/localToday.ts';
import type { Units } from '#web/parts/ViewUnits.tsx';
import { written } from '#web/parts/written.ts';
import { onBarText } from '../onBarText.ts';
import type { TrialStrength } from './trialStrength.ts';

/** On what a lifter's strength rests and what was assumed. */
export function strengthWords(
  club: ClubRecords,
  { best, bodyMassKg, bodyWeighed, capability }: TrialStrength,
  units: Pick<Units, 'mass' | 'length'>,
): string {
  const on = onBarText(best.setup, club);
  const bar = `${written(best.setup.barKg, units.mass)} ${units.mass}${on && ` with ${on}`}`;
  const body = `${written(bodyMassKg, units.mass)} ${units.mass}`;
  const share = Math.round((100 * capability.movedBodyKg) / bodyMassKg);
  return [
    `Rests on ${bar} of ${dateText(best.doneOn)} (${startText(best.lift, best.setup.start, units.length)}, ${equipmentWord(best.equipment)}).`,
    `Assumed: how strength grows with height and falls with speed is what is usual for the lift${share > 0 ? `, and ${share} % of the body${bodyWeighed ? `, ${body},` : ''} rises with the bar` : ''}.`,
    bodyWeighed || share === 0 ? '' : `Body mass is not known: ${body} is assumed. Weigh in.`,
    'A newer best narrows the range.',
  ]
    .filter(Boolean)
    .join(' ');
}
