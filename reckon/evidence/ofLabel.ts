import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lifter } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** Whether a lifter has that label: capitals tell none apart. */
export function hasLabel({ labels }: Pick<Lifter, 'labels'>, label: string): boolean {
  return labels.some((own) => own.toLowerCase() === label.toLowerCase());
}

/** The club as if only those with a label were in it: its lifters, their bests and their sets; the gear is everybody's. */
export function ofLabel(
  { records, log }: { records: ClubRecords; log: LoggedSet[] },
  label: string,
): { records: ClubRecords; log: LoggedSet[] } {
  const lifter = records.lifter.filter((one) => hasLabel(one, label));
  const ids = new Set(lifter.map(({ id }) => id));
  const isOwn = ({ lifterId }: { lifterId: string }) => ids.has(lifterId);
  return { records: { ...records, lifter, best: records.best.filter(isOwn) }, log: log.filter(isOwn) };
}
