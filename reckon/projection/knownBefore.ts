import type { ClubRecords } from '#contract/records/allKinds.ts';
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
  return {
    records: {
      ...records,
      bodyMass: records.bodyMass.filter(({ takenOn }) => takenOn < day),
      liftHeights: records.liftHeights.filter(({ measuredOn }) => measuredOn < day),
      best: records.best.filter(({ doneOn }) => doneOn < day),
      bandReading: records.bandReading.filter(({ takenOn }) => takenOn < day),
      scaleReading: records.scaleReading.filter(({ takenOn }) => takenOn < day),
      day: [],
    },
    log: log.filter(({ doneOn, struckAt }) => doneOn < day && struckAt === null),
  };
}
