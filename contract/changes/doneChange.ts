import { z } from 'zod';
import { kindNames } from '#contract/records/allKinds.ts';
import { lift } from '#contract/records/lift.ts';
import { who } from './who.ts';

/** Records of one kind to which a change did the same. */
const doneRecords = z.strictObject({
  kind: z.enum(kindNames),
  did: z.enum(['added', 'changed', 'removed']),
  count: z.int().min(1),
  /** The first of them as a coach would name it. */
  called: z.string(),
  /** The lifter that the first belongs to, by name; null: it belongs to nobody. */
  of: z.string().nullable(),
});

/** Sets of one lifter in one lift to which a change did the same. */
const doneSets = z.strictObject({
  did: z.enum(['counts', 'struck']),
  /** They were logged by this very change. */
  isNew: z.boolean(),
  count: z.int().min(1),
  lifter: z.string(),
  lift,
});

/** A change as a list of what was done tells it. */
export const doneChange = z.strictObject({
  seq: z.int().min(1),
  madeAt: z.iso.datetime(),
  who: who.nullable(),
  /** Null: it took nothing back. Else the change that was first made, and whether this took it back or did it again. */
  back: z.strictObject({ of: z.int().min(1), again: z.boolean() }).nullable(),
  /** It is taken back as things are. */
  isUndone: z.boolean(),
  replaced: z.boolean(),
  records: z.array(doneRecords),
  sets: z.array(doneSets),
  /** Why it cannot be taken back now, as one sentence; null: it can. */
  whyNot: z.string().nullable(),
});
export type DoneChange = z.infer<typeof doneChange>;

/** A page of what was done, newest first, and what is taken back, or done again, next. */
export const doneChanges = z.strictObject({
  changes: z.array(doneChange),
  /** The last change that is not taken back; null: there is none. */
  undo: doneChange.nullable(),
  /** The last that was taken back, where nothing was done since; what takes it back makes it count again. */
  redo: doneChange.nullable(),
  /** Whether there are older ones. */
  hasOlder: z.boolean(),
});
export type DoneChanges = z.infer<typeof doneChanges>;
