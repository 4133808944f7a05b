import type { Kg } from '../numeric/quantity.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';

/** The best that one gear set can do: its bar mass and misfit. */
export interface SetupScore {
  /** Index into `SetupRanking.sets`. */
  index: number;
  barKg: Kg;
  misfit: number;
}

/** The gear sets of one rack for one lifter, by misfit. Reps are only simulated as far as somebody asks. */
export interface SetupRanking {
  sets: readonly GearSet[];
  /** A run through the sets, best first: it gives the next one each time, null after the last. What is scored stays scored. */
  fromBest(): () => SetupScore | null;
  /** The exact score of one set. */
  scoreOf(index: number): SetupScore;
  /** A misfit that the set cannot go below; exact once it is scored. */
  lowerBoundOf(index: number): number;
  /** Reps simulated so far. */
  reps(): number;
  /** Of a stock too large to score every set: how many were left out, and the misfit that none of them goes below. */
  leftOut?: { count: number; from: number };
}

export interface RankingInput {
  task: LifterTask;
  gear: RackGear;
  sets: readonly GearSet[];
  /** Masses the bar may have, ascending. */
  loadableKg: readonly number[];
  /** How many of them, the lightest first, a set leaves room for within what the lifter may hold; at least one. */
  countFor(set: GearSet): number;
}
