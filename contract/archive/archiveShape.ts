import { z } from 'zod';
import { allKinds } from '#contract/records/allKinds.ts';
import { prescription } from '#contract/records/prescription.ts';

/** The name by which an archive is known, and the version of its form that this program writes and reads. */
export const archiveFormat = 'rackwright club archive';
export const archiveVersion = 1;

const lists = Object.fromEntries(Object.values(allKinds).map(({ name, shape }) => [name, z.array(shape)]));

export const archiveShape = z.strictObject({
  format: z.literal(archiveFormat),
  version: z.literal(archiveVersion),
  records: z.strictObject(lists),
  prescriptions: z.array(prescription),
});
