import type { AskedPlan, ClubSeason, LifterOfSeason } from '#contract/season/clubSeason.ts';

/** One lifter in one working out of the season. */
export interface Side {
  season: ClubSeason;
  lifter: LifterOfSeason;
}

export function planOf({ season, lifter }: Side): AskedPlan | null {
  return lifter.plan === null ? null : season.plans[lifter.plan]!;
}
