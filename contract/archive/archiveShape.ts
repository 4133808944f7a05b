import { z } from 'zod';
import { allKinds } from '#contract/records/allKinds.ts';
import { loggedSet } from '#contract/records/loggedSet.ts';
import { prescription } from '#contract/records/prescription.ts';
import { formerRecord } from './formerRecord.ts';

/** The name by which an archive is known. */
export const archiveFormat = 'rackwright club archive';
/** The version in which it got the log, the last change of its form beside new kinds. */
export const withLog = 2;
/** The version that this program writes: that of the newest kind, as it says itself. It reads all up to that. */
export const archiveVersion = Math.max(
  withLog,
  ...Object.values(allKinds).map(({ facts }) => facts.sinceArchive),
);

const lists = Object.fromEntries(Object.values(allKinds).map(({ name, shape }) => [name, z.array(shape)]));

export const archiveShape = z.strictObject({
  format: z.literal(archiveFormat),
  version: z.literal(archiveVersion),
  records: z.strictObject(lists),
  prescriptions: z.array(prescription),
  /** The log, struck sets included. */
  sets: z.array(loggedSet),
  /** Removed gear that the log names. */
  former: z.array(formerRecord),
});
