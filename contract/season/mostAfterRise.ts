/** The most lifts of a week that are no rise beyond the limit, 0.3 for 30 %; of 100 lifts 115 are 15 % more, whatever binary fractions make of it. */
export function mostAfterRise(lifts: number, mostRise: number): number {
  return Math.floor(lifts * (1 + mostRise) + 1e-9);
}
