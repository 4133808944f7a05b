import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { dateText } from '#contract/words/dateText.ts';
import { equipmentWord, startText } from '#contract/words/liftWords.ts';
import { written } from '#contract/words/written.ts';
import type { Units } from '#web/parts/ViewUnits.tsx';
import { onBarText } from '#web/setup/onBarText.ts';
import type { TrialStrength } from './trialStrength.ts';

/** On what a lifter's strength rests, what was assumed, and how to know better. */
export function strengthWords(
  club: ClubRecords,
  { best, estimate, bodyMassKg, bodyMassKnown, capability }: TrialStrength,
  units: Pick<Units, 'mass' | 'length'>,
): string {
  const mass = (kg: number) => `${written(kg, units.mass)} ${units.mass}`;
  if (estimate !== null) return estimateWords(estimate);
  const on = best && onBarText(best.setup, club);
  const rests = best
    ? `Rests on ${mass(best.setup.barKg)}${on ? ` with ${on}` : ''} on ${dateText(best.doneOn)} (${startText(best.lift, best.setup.start, units.length)}, ${equipmentWord(best.equipment)}).`
    : 'No best of this lift is written down: strength is assumed from body mass alone. Write down one heavy single.';
  const share = Math.round((100 * capability.movedBodyKg) / bodyMassKg);
  const body =
    share === 0
      ? ''
      : `, and that ${share} % of the body${bodyMassKnown === 'measured' ? '' : `, taken as ${mass(bodyMassKg)},`} rises with the bar`;
  return `${rests} Assumed: strength grows with height and falls with speed as is usual for the lift${body}. A newer best narrows the range.`;
}

/** Strength by the whole log: its shape is learned as far as the sets tell it. */
function estimateWords({ setCount, lastSetOn }: StrengthEstimate): string {
  const newest = lastSetOn === null ? '' : `, the newest from ${dateText(lastSetOn)}`;
  const sets = setCount === 1 ? 'one set' : `all ${setCount} sets`;
  return `Rests on ${sets} of this lift${newest}: see what this lifter can do under Strength. What no set has shown yet is assumed to be as usual for the lift.`;
}
