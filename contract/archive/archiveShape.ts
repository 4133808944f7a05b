import { z } from 'zod';
import { allKinds } from '#contract/records/allKinds.ts';
import { loggedSet } from '#contract/records/loggedSet.ts';
import { prescription } from '#contract/records/prescription.ts';
import { takenPlan } from '#contract/records/takenPlan.ts';
import { formerRecord } from './formerRecord.ts';

/** The name by which an archive is known. */
export const archiveFormat = 'rackwright club archive';
/** The version in which it got the log, the last change of its form beside new kinds. */
export const withLog = 2;
/** The version in which the club itself got the hour of its training; an older one is read without. */
const withTrainingHour = 5;
/** The version in which it got the plans of seasons that were taken. */
export const withTakenPlans = 6;
/** The version in which the club got its near weeks and lifters in seasons their classes; an older one is read without. */
const withNearWeeksAndClasses = 8;
/** The version that this program writes: that of the newest kind or field, as they say themselves. It reads all up to that. */
export const archiveVersion = Math.max(
  withLog,
  withTrainingHour,
  withTakenPlans,
  withNearWeeksAndClasses,
  ...Object.values(allKinds).map(({ facts }) => facts.sinceArchive),
);

/** What the archive's lists hold: of each kind of record, and beside them. */
export const archiveItems = {
  records: Object.fromEntries(Object.values(allKinds).map(({ name, shape }) => [name, shape as z.ZodType])),
  prescriptions: prescription,
  /** Plans of seasons. */
  takenPlans: takenPlan,
  /** The log, struck sets included. */
  sets: loggedSet,
  /** Removed gear that the log names. */
  former: formerRecord,
};

export const archiveShape = archiveOf((item) => z.array(item));
/** The archive about its lists, whatever is in them. */
export const archiveFrame = archiveOf(() => z.array(z.unknown()));

function archiveOf<List extends z.ZodType>(listOf: (item: z.ZodType) => List) {
  const { records, prescriptions, takenPlans, sets, former } = archiveItems;
  const lists = Object.entries(records).map(([kind, shape]) => [kind, listOf(shape)] as const);
  return z.strictObject({
    format: z.literal(archiveFormat),
    version: z.literal(archiveVersion),
    records: z.strictObject(Object.fromEntries(lists)),
    prescriptions: listOf(prescriptions),
    takenPlans: listOf(takenPlans),
    sets: listOf(sets),
    former: listOf(former),
  });
}
