import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { BandReps } from './BandReps.ts';

/** How often a set stretched each of its band pairs. A missed rep stretched the bands too. */
export function repsOnBands({ doneOn, setup, reps, made }: LoggedSet): BandReps[] {
  return setup.bands.map(({ bandPairId }) => ({ bandPairId, doneOn, reps: made + Number(made < reps) }));
}
