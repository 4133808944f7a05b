import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lifter } from '#contract/records/lifters.ts';

/** Whether a lifter has that label: capitals tell none apart. */
export function hasLabel({ labels }: Pick<Lifter, 'labels'>, label: string): boolean {
  return labels.some((own) => own.toLowerCase() === label.toLowerCase());
}

/** The club's records as if only those with a label were in it: its lifters and their bests; the gear is everybody's. */
export function ofLabel(records: ClubRecords, label: string): ClubRecords {
  const lifter = records.lifter.filter((one) => hasLabel(one, label));
  const ids = new Set(lifter.map(({ id }) => id));
  return { ...records, lifter, best: records.best.filter(({ lifterId }) => ids.has(lifterId)) };
}
