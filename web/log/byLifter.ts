import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** The sets of a day by lifter, in the order in which they began, each with theirs in order. */
export function byLifter(sets: readonly LoggedSet[]): { lifterId: string; sets: LoggedSet[] }[] {
  const lifters = new Map<string, LoggedSet[]>();
  for (const set of sets) lifters.set(set.lifterId, [...(lifters.get(set.lifterId) ?? []), set]);
  return [...lifters].map(([lifterId, own]) => ({
    lifterId,
    sets: own.toSorted((a, b) => a.order - b.order),
  }));
}
