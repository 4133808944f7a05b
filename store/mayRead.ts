import type { Who } from '#contract/changes/who.ts';
import type { KindName } from '#contract/records/allKinds.ts';

/** All that a club keeps of which somebody may read the one and not the other. */
export type Readable = KindName | 'loggedSet' | 'prescription' | 'takenPlan';

/** What somebody may read of something kept: all of it, it without what is not theirs to know, or null, as if it were not there. */
export type MayRead = <Kept extends object>(who: Who, kind: Readable, kept: Kept) => Kept | null;

/**
 * The one place that decides what a person may read: whatever a club's store gives out has passed here, one thing kept at a time, and
 * the log of changes too. Whoever can open a club may read all of it today: it is the coach's own machine.
 */
export const mayRead: MayRead = (_who, _kind, kept) => kept;
