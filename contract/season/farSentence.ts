import { liftWord } from '#contract/words/liftWords.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { fromSi } from '#core/units/units.ts';
import type { PlannedGroup } from './seasonPlan.ts';
import type { KgRange, MaximumInWeek, StrengthAhead } from './strengthAhead.ts';

/** What a group of a far week may come to in kg, as a range by how strong the lifter may be then; why nothing can be said where that is so. */
export function farSentence(
  group: FarGroup,
  monday: string,
  { lifts }: Pick<StrengthAhead, 'lifts'>,
  mass: MassUnit,
): string {
  const { lift, aim, lockoutShare, meanShare, bandShare } = group;
  const known = lifts.find((one) => one.lift === lift);
  if (known === undefined)
    return `Nothing is known of the ${liftWord(lift)} of this lifter, so nothing can be said in ${mass}. Enter a best or log a set.`;
  const maximum = known.weeks.find((week) => week.monday === monday);
  if (maximum === undefined) return `More than a year ahead nothing can be said in ${mass}.`;
  if (aim.by === 'speed')
    return `What that is in ${mass} depends on the bands and on how fast this lifter is then; it appears once the day is near.`;
  if (aim.by === 'capability') return ofHeld(aim, group.start, maximum, mass);
  const share = lockoutShare ?? meanShare;
  if (share === null) return `What that is in ${mass} appears once the day is near.`;
  const where = lockoutShare === null ? 'on average over the range' : 'at lockout';
  const bands = bandShare ? `, of it ${massRange(maximum, bandShare, mass)} in bands` : '';
  return `About ${massRange(maximum, share, mass)} ${where}${bands}, by how strong this lifter may be then.`;
}

type FarGroup = Pick<PlannedGroup, 'lift' | 'start' | 'aim' | 'lockoutShare' | 'meanShare' | 'bandShare'>;

/** A share of strength at each end. Where a start stops short of the full range its own bottom is not looked up, and lockout alone is told. */
function ofHeld(
  { bottomShare, lockoutShare }: Extract<PlannedGroup['aim'], { by: 'capability' }>,
  { way }: PlannedGroup['start'],
  { held }: MaximumInWeek,
  mass: MassUnit,
): string {
  if (held === null)
    return `What that is in ${mass} cannot be said while this lifter's heights are not known.`;
  const isWhole = way === 'free' || way === 'paused';
  const bottom = isWhole ? `${massRange(held.bottom, bottomShare, mass)} at the bottom and ` : '';
  return `About ${bottom}${massRange(held.lockout, lockoutShare, mass)} at lockout, by how strong this lifter may be then.`;
}

/** "95 to 110 kg": a share of a maximum, widened to whole steps, so that it is never one figure. */
export function massRange({ lowKg, highKg }: KgRange, share: number, mass: MassUnit): string {
  const step = STEP[mass];
  const low = step * Math.floor(fromSi(share * lowKg, mass) / step);
  const high = Math.max(low + step, step * Math.ceil(fromSi(share * highKg, mass) / step));
  return `${low} to ${high} ${mass}`;
}

const STEP: Record<MassUnit, number> = { kg: 5, lb: 10 };
