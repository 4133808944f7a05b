import { liftWord } from '#contract/words/liftWords.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { fromSi } from '#core/units/units.ts';
import type { PlannedGroup } from './seasonPlan.ts';
import type { MaximumInWeek, StrengthAhead } from './strengthAhead.ts';

/** What a group of a far week may come to in kg, as a range by how strong the lifter may be then; why nothing can be said where that is so. */
export function farSentence(
  {
    lift,
    lockoutShare,
    meanShare,
    bandShare,
  }: Pick<PlannedGroup, 'lift' | 'lockoutShare' | 'meanShare' | 'bandShare'>,
  monday: string,
  { lifts }: Pick<StrengthAhead, 'lifts'>,
  mass: MassUnit,
): string {
  const known = lifts.find((one) => one.lift === lift);
  if (known === undefined)
    return `Nothing is known of the ${liftWord(lift)} of this lifter, so nothing can be said in ${mass}. Enter a best or log a set.`;
  const maximum = known.weeks.find((week) => week.monday === monday);
  if (maximum === undefined) return `More than a year ahead nothing can be said in ${mass}.`;
  const share = lockoutShare ?? meanShare;
  if (share === null) return `What that is in ${mass} appears once the day is near.`;
  const where = lockoutShare === null ? 'on average over the range' : 'at lockout';
  const bands = bandShare ? `, of it ${massRange(maximum, bandShare, mass)} in bands` : '';
  return `About ${massRange(maximum, share, mass)} ${where}${bands}, by how strong this lifter may be then.`;
}

/** "95 to 110 kg": a share of a maximum, widened to whole steps, so that it is never one figure. */
export function massRange(
  { lowKg, highKg }: Pick<MaximumInWeek, 'lowKg' | 'highKg'>,
  share: number,
  mass: MassUnit,
): string {
  const step = STEP[mass];
  const low = step * Math.floor(fromSi(share * lowKg, mass) / step);
  const high = Math.max(low + step, step * Math.ceil(fromSi(share * highKg, mass) / step));
  return `${low} to ${high} ${mass}`;
}

const STEP: Record<MassUnit, number> = { kg: 5, lb: 10 };
