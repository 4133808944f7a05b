/** A hard lift with one exact setup, as far as its scatter from day to day goes. */
export interface RepeatedLift {
  lifterId: string;
  /** The same for lifts that can be compared bar for bar. */
  key: string;
  /** A calendar date, 2026-11-25. */
  doneOn: string;
  reps: number;
  /** The bar of a single of the same worth. */
  barKg: number;
}
