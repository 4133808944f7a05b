import type { Tiring } from '#core/effort/Tiring.ts';
import type { Share } from '#core/numeric/quantity.ts';

/** What a percentage counts: the bar alone, or bar, bands and chains at the bottom, at lockout, on average. */
export type Basis = 'bar' | 'bottom' | 'lockout' | 'mean';

/** A rested set of so many reps, and how its reps tire the lifter. */
export interface WholeSet {
  reps: number;
  tiring: Tiring;
}

/** What a prescription aims at. Shares are fractions; speeds are mean speeds of the first rep, or of all reps of a set. */
export type Aim =
  | { by: 'percent'; targets: readonly { basis: Basis; share: Share }[] }
  | { by: 'capability'; bottomShare: Share; lockoutShare: Share }
  | SpeedAim;
export interface SpeedAim {
  by: 'speed';
  fromMps: number;
  toMps: number;
  /** Left out: the first rep. */
  over?: WholeSet;
}
