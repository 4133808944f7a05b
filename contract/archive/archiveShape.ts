import { z } from 'zod';
import { allKinds } from '#contract/records/allKinds.ts';
import { loggedSet } from '#contract/records/loggedSet.ts';
import { prescription } from '#contract/records/prescription.ts';
import { formerRecord } from './formerRecord.ts';

/** The name by which an archive is known, and the version of its form that this program writes. It reads all up to that. */
export const archiveFormat = 'rackwright club archive';
export const archiveVersion = 3;

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
