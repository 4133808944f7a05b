import { Piscina } from 'piscina';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import type { Prior } from '#core/strength/parameters.ts';

/** One lift of one lifter on a day, with all that the estimate rests on. */
interface LiftAsked {
  records: ClubRecords;
  log: LoggedSet[];
  of: { lifterId: string; lift: Lift; on: string };
  prior: Prior;
}

export type EstimateLift = (asked: LiftAsked) => Promise<StrengthEstimate | null>;

/** One thread for each core of a common small computer; more would only slow down the screens. */
export const estimateThreadCount = 2;

/** Estimates lifts in threads of their own, begun when first asked for. */
export function estimateThreads(count = estimateThreadCount): {
  estimateLift: EstimateLift;
  close: () => Promise<void>;
} {
  let threads: Piscina<LiftAsked, StrengthEstimate | null> | undefined;
  return {
    estimateLift(asked) {
      threads ??= new Piscina({
        filename,
        minThreads: 0,
        maxThreads: count,
        idleTimeout: keepWarmMs,
      });
      return threads.run(asked);
    },
    async close() {
      await threads?.destroy();
    },
  };
}

const filename = new URL('./estimateWorker.mjs', import.meta.url).href;
const keepWarmMs = 10 * 60 * 1000;
