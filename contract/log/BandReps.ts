/** How often a band pair was stretched on a day, by the log. */
export interface BandReps {
  bandPairId: string;
  doneOn: string;
  reps: number;
}
