import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { lazyThreads } from './lazyThreads.ts';
import type { DayEstimates } from './strengthEstimator.ts';

export type SolveDay = (records: ClubRecords, day: Day, known: DayEstimates) => Promise<DayPlan>;

/** Tells a plan of before the log was worked out anew; null where there is nothing to add. */
export type PlanByLog = (
  records: ClubRecords,
  day: Day,
  plan: DayPlan,
  estimates: readonly StrengthEstimate[],
) => Promise<DayPlan | null>;

/** Solves training days in a thread of their own, one after another, so that every screen is answered meanwhile. */
export function daySolver(): {
  solveDay: SolveDay;
  planByLog: PlanByLog;
  /**
   * Solves a part of the club's newest day and tells nobody: until the thread is there, its code translated and the bands' curves
   * fitted, a first question takes a second more than those after it.
   */
  rehearse: (records: ClubRecords) => Promise<void>;
  close: () => Promise<void>;
} {
  const thread = lazyThreads(worker, keepWarmMs);
  return {
    async solveDay(records, day, { estimates, awaited }) {
      const solved = await thread.run<Solved>({ records, day, estimates, awaited });
      if ('missing' in solved) throw new CannotAssemble(solved.missing);
      return solved.plan;
    },
    planByLog: (records, day, plan, estimates) =>
      thread.run<DayPlan | null>({ records, day, plan, estimates }, 'planByLog'),
    async rehearse(records) {
      const day = records.day.toSorted((a, b) => a.date.localeCompare(b.date)).at(-1);
      if (day === undefined) return;
      const groups = day.groups.slice(0, 1).map((group) => ({ ...group, places: group.places.slice(0, 8) }));
      await thread.run<Solved>({ records, day: { ...day, groups }, estimates: [], awaited: [] });
    },
    close: thread.close,
  };
}

type Solved = { plan: DayPlan } | { missing: string };

const worker = new URL('./solveDayWorker.mjs', import.meta.url);
/** An evening of training with all its pauses. */
const keepWarmMs = 3 * 60 * 60 * 1000;
