import type { BodyMass } from '#contract/records/lifters.ts';
import type { notOfAge } from '#contract/records/notOfAge.ts';
import type { ClassOfLifter } from './clubSeason.ts';

/** The class that a lifter means to be in at a meet ahead, and what the scales said last. */
export interface ClassAhead extends ClassOfLifter {
  /** The last weighing; null: none is on record. */
  weighed: Pick<BodyMass, 'takenOn' | 'massKg'> | null;
  /** Why nobody may think of less body mass for it whatever the scales say; null: of age. */
  notOfAge: ReturnType<typeof notOfAge>;
}
