import type { Query } from '@tanstack/react-query';
import type { ClubState } from '#contract/changes/clubState.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** Whether a query tells the last times of a day of the club before which none of these sets was done, but on the day itself. */
export function lastTimesStand(
  { queryKey: [, word, dayId] }: Pick<Query, 'queryKey'>,
  { records }: Pick<ClubState, 'records'>,
  touched: readonly LoggedSet[],
): boolean {
  const day = word === 'lastTime' && records.day.find(({ id }) => id === dayId);
  return !!day && touched.every((set) => set.doneOn >= day.date || set.dayId === day.id);
}
