import { z } from 'zod';
import { allKinds, type ClubRecords, type KindName, kindNames } from '#contract/records/allKinds.ts';
import { recordId } from '#contract/records/kind.ts';
import { type LoggedSet, loggedSet } from '#contract/records/loggedSet.ts';
import { who } from './who.ts';

const instant = z.iso.datetime();

const standing = z.strictObject({
  seq: z.int().min(0),
  /** Null before the first change. */
  madeAt: instant.nullable(),
});

/**
 * The last change that an answer has in it. The number alone is not enough: put an older copy of a file in the place of a newer one,
 * and the same numbers mean other changes.
 */
export type Standing = z.infer<typeof standing>;

/** Every record of a club. */
export interface ClubState extends Standing {
  records: ClubRecords;
}

const changeHead = z.strictObject({
  seq: z.int().min(1),
  madeAt: instant,
  /** Null: made before changes knew. */
  who: who.nullable(),
  /** The change that it took back. */
  undoes: z.int().min(1).nullable(),
});

/** What was done to a club after some change, as one state of it differs from the other. */
export interface ClubChanges extends Standing {
  /** Records as they now are, new or changed. */
  put: Partial<ClubRecords>;
  /** Ids of records that are gone; the reader may never have known them. */
  removed: Partial<Record<KindName, string[]>>;
  /** Sets of the log that were logged, struck or brought back, as they now are; null: any may read otherwise than before. */
  sets: LoggedSet[] | null;
  /** That a change was made, and by whom. */
  changes: z.infer<typeof changeHead>[];
}

export const clubState = z.strictObject({
  ...standing.shape,
  records: z.strictObject(byKind((kind) => z.array(allKinds[kind].shape))),
});

export const clubChanges = z.strictObject({
  ...standing.shape,
  put: z.strictObject(byKind((kind) => z.array(allKinds[kind].shape).optional())),
  removed: z.strictObject(byKind(() => z.array(recordId).optional())),
  sets: z.array(loggedSet).nullable(),
  changes: z.array(changeHead),
});

function byKind<T>(of: (kind: KindName) => T): Record<KindName, T> {
  return Object.fromEntries(kindNames.map((kind) => [kind, of(kind)])) as Record<KindName, T>;
}
