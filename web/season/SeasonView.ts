import type { Lifter, Restriction } from '#contract/records/lifters.ts';
import type { Method } from '#contract/records/method.ts';
import type { OwnBox, SeasonPlan, SeasonWarning, WeekOfLifter } from '#contract/season/seasonPlan.ts';

/** One lifter in a season, as far as it is shown. */
export interface LifterSeason {
  lifter: Lifter;
  plan: Pick<SeasonPlan, 'meets' | 'warnings'> & { weeks: WeekOfLifter[] };
  /** For each depth at which the plan seats this lifter. */
  ownBoxes: readonly OwnBox[];
  /** Those of the plan, and those of this lifter alone. */
  warnings: readonly SeasonWarning[];
  restrictions: readonly Restriction[];
  /** Days on which the coach set something by hand. */
  byHandOn: readonly string[];
}

/** A season as its pages show it: the plan of the records as they are now. */
export interface SeasonView {
  id: string;
  title: string;
  method: Method;
  today: string;
  /** The last day that is worked out to bar and bands by itself; null: none is. */
  nearUntil: string | null;
  lifters: readonly LifterSeason[];
}
