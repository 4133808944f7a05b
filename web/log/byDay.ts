import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** A day of the log: its lifters in the order in which they began, each with their sets in order. */
export interface LogDay {
  date: string;
  lifters: { lifterId: string; sets: LoggedSet[] }[];
}

/** Sets in days, the newest first. */
export function byDay(sets: readonly LoggedSet[]): LogDay[] {
  const days = new Map<string, Map<string, LoggedSet[]>>();
  for (const set of sets) {
    const day = days.get(set.doneOn) ?? new Map<string, LoggedSet[]>();
    days.set(set.doneOn, day);
    day.set(set.lifterId, [...(day.get(set.lifterId) ?? []), set]);
  }
  return [...days]
    .toSorted(([a], [b]) => b.localeCompare(a))
    .map(([date, lifters]) => ({
      date,
      lifters: [...lifters].map(([lifterId, own]) => ({
        lifterId,
        sets: own.toSorted((a, b) => a.order - b.order),
      })),
    }));
}
