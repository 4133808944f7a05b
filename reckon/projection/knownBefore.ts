import { allKinds, type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import { dateOf } from '#contract/records/dateOf.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';

/**
 * The club as it was known when a day began: nothing of that day or later. Racks, hookups, statures and rest lengths carry no
 * date and stay; a set that was struck later as a mistake stays out, as its true figures are not known.
 */
export function knownBefore<R extends ClubRecords>(
  records: R,
  log: readonly LoggedSet[],
  day: string,
): { records: R; log: LoggedSet[] } {
  const known = kindNames.map((kind) => {
    const isDated = allKinds[kind].facts.date?.knownFrom;
    const isKnown = (record: object) => !isDated || dateOf(kind, record)! < day;
    return [kind, records[kind].filter(isKnown)];
  });
  return {
    records: { ...records, ...Object.fromEntries(known) },
    log: log.filter(({ doneOn, struckAt }) => doneOn < day && struckAt === null),
  };
}
