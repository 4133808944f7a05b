import { dateText } from '#contract/words/dateText.ts';
import type { LifterSeason } from './SeasonView.ts';
import type { WeekInAddress } from './useWeekInAddress.ts';

/** Why no week is open though the address names one; null where it names none, or one that is there. */
export function weekNotThere(
  { lifterId, monday }: WeekInAddress,
  lifters: readonly LifterSeason[],
): string | null {
  if (lifterId === null && monday === null) return null;
  if (lifterId === null) return 'The address names a week and no lifter, so none is open.';
  const of = lifters.find(({ lifter }) => lifter.id === lifterId);
  if (of === undefined) return 'The address names a lifter who is not in this season.';
  if (monday === null) return `The address names ${of.lifter.name} and no week, so none is open.`;
  const mondays = of.plan.weeks.map((week) => week.monday);
  if (mondays.includes(monday)) return null;
  const [first, last] = [mondays[0], mondays.at(-1)];
  const theirs =
    first === undefined || last === undefined
      ? 'no week of it is planned yet'
      : `its weeks begin on Mondays, from ${dateText(first)} to ${dateText(last)}`;
  return `${of.lifter.name} has no week "${monday}" in this season: ${theirs}.`;
}
