import type { Equipment, Lift, Setup } from '#contract/records/lift.ts';

/** A lift that tells what a lifter could do that day with one exact setup. */
export interface HardLift {
  lifterId: string;
  lift: Lift;
  equipment: Equipment;
  setup: Setup;
  doneOn: string;
  /** The exact setup; see contract/setupKey.ts. */
  key: string;
  reps: number;
  /** The bar of a single of the same worth. */
  barKg: number;
}
