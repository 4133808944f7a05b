/** What an attack tried, how much of it was acknowledged and found again, and what was wrong. */
export interface Tally {
  tried: Record<string, number>;
  survived: number;
  faults: string[];
}

/** A whole number from one to another, by the seed of the attack. */
export type Draw = (from: number, to: number) => number;
