import type { Day, Group } from '#contract/records/day.ts';

/** The group of the newest earlier day that did the same lift with anybody, the same kind of work before another. */
export function lastTime(
  days: readonly Day[],
  day: Pick<Day, 'id' | 'date'>,
  group: Group,
): { date: string; group: Group } | null {
  const did = days
    .filter(({ id, date }) => id !== day.id && date < day.date)
    .sort((a, b) => b.date.localeCompare(a.date))
    .flatMap(({ date, groups }) =>
      groups
        .filter(({ lift, places }) => lift === group.lift && places.length > 0)
        .map((group) => ({ date, group })),
    );
  return did.find((then) => then.group.work === group.work) ?? did[0] ?? null;
}

/** The rack where somebody who comes belongs: the kept one, that of the last time, or the one with the fewest lifters. */
export function rackFor(
  group: Group,
  lifterId: string,
  rackIds: readonly string[],
  before: Group | null,
): string | null {
  const known = [...group.away, ...(before?.places ?? [])].find((place) => place.lifterId === lifterId);
  if (known && rackIds.includes(known.rackId)) return known.rackId;
  const crowd = (rackId: string) => group.places.filter((place) => place.rackId === rackId).length;
  return [...rackIds].sort((a, b) => crowd(a) - crowd(b))[0] ?? null;
}
