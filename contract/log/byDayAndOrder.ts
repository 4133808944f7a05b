import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** The order in which a log is read: day by day, and within a day as the sets were done. */
export function byDayAndOrder(a: LoggedSet, b: LoggedSet): number {
  if (a.doneOn !== b.doneOn) return a.doneOn < b.doneOn ? -1 : 1;
  return a.order - b.order || (a.id < b.id ? -1 : 1);
}
