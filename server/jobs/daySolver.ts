import { Piscina } from 'piscina';
import { CannotAssemble } from '#contract/assemble/CannotAssemble.ts';
import type { DayPlan } from '#contract/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';
import type { DayEstimates } from './strengthEstimator.ts';

export type SolveDay = (records: ClubRecords, day: Day, known: DayEstimates) => Promise<DayPlan>;

/** Solves training days in a thread of their own, one after another, so that every screen is answered meanwhile. */
export function daySolver(): { solveDay: SolveDay; close: () => Promise<void> } {
  let threads: Piscina<Asked, Solved> | undefined;
  return {
    async solveDay(records, day, { estimates, awaited }) {
      // Begun when first asked for: the server is up before the solver is loaded.
      threads ??= new Piscina({ filename, minThreads: 0, maxThreads: 1, idleTimeout: keepWarmMs });
      const solved = await threads.run({ records, day, estimates, awaited });
      if ('missing' in solved) throw new CannotAssemble(solved.missing);
      return solved.plan;
    },
    async close() {
      await threads?.destroy();
    },
  };
}

type Asked = { records: ClubRecords; day: Day } & DayEstimates;
type Solved = { plan: DayPlan } | { missing: string };

const filename = new URL('./solveDayWorker.mjs', import.meta.url).href;
const keepWarmMs = 10 * 60 * 1000;
