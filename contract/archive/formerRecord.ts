import { z } from 'zod';
import { allKinds, type RecordOf } from '#contract/records/allKinds.ts';

/** Kinds of gear that a logged set can still name after they were removed, owners first. */
export const formerKinds = [
  'bar',
  'collarPair',
  'bandPair',
  'chainPair',
  'rack',
  'anchor',
  'hookup',
] as const;
type FormerKind = (typeof formerKinds)[number];

/** A record that the club removed and its log still names: it tells what hung on the bar. */
export type FormerRecord = { [K in FormerKind]: { kind: K; record: RecordOf<K> } }[FormerKind];

export const formerRecord = z.union(
  formerKinds.map((kind) => z.strictObject({ kind: z.literal(kind), record: allKinds[kind].shape })),
);
