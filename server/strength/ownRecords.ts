import type { FormerRecord } from '#contract/archive/formerRecord.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';

/** The club's gear, with what it no longer has, and one lifter's own records: all that travels to a thread. */
export function ownRecords(
  records: ClubRecords,
  lifterId: string,
  former: readonly FormerRecord[],
): ClubRecords {
  const own = <R extends { lifterId: string }>(list: readonly R[]) =>
    list.filter((record) => record.lifterId === lifterId);
  const whole = {
    ...records,
    lifter: records.lifter.filter(({ id }) => id === lifterId),
    bodyMass: own(records.bodyMass),
    liftHeights: own(records.liftHeights),
    best: own(records.best),
    day: [],
  };
  for (const { kind, record } of former) Object.assign(whole, { [kind]: [...whole[kind], record] });
  return whole;
}
