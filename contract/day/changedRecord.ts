import { z } from 'zod';
import { kindNames } from '#contract/records/allKinds.ts';

/** A record that a day's loads rest on and that was changed since they were worked out. */
export const changedRecord = z.strictObject({
  kind: z.enum(kindNames as [string, ...string[]]),
  id: z.string(),
  what: z.enum(['new', 'changed', 'removed']),
  /** As a coach names it: `bar "Squat bar"`, `body mass of 2026-11-25`. */
  called: z.string(),
  /** Of the record itself, or of what it belongs to: the lifter, the band pair. */
  lifterId: z.string().nullable(),
  bandPairId: z.string().nullable(),
  /** A lifter's new body mass; null of any other record. */
  massKg: z.number().nullable(),
  /** The pair or chain must not hang any more. */
  outOfService: z.boolean(),
});
export type ChangedRecord = z.infer<typeof changedRecord>;
