import { Piscina } from 'piscina';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import type { Prior } from '#core/strength/parameters.ts';
import type { FollowCapacity } from './seasonCapacity.ts';

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

/** Estimates lifts, and follows work capacity, in threads of their own, begun when first asked for. */
export function estimateThreads(count = estimateThreadCount): {
  estimateLift: EstimateLift;
  followCapacity: FollowCapacity;
  close: () => Promise<void>;
} {
  let begun: Piscina | undefined;
  let isClosed = false;
  const threads = () => {
    begun ??= new Piscina({ filename, minThreads: 0, maxThreads: count, idleTimeout: keepWarmMs });
    return begun;
  };
  return {
    estimateLift: (asked) => threads().run(asked),
    async followCapacity(asked) {
      try {
        return await threads().run(asked, { name: 'followCapacity' });
      } catch (error) {
        // When the server ends, whoever asked is gone already.
        return isClosed ? new Promise(() => {}) : Promise.reject(error);
      }
    },
    async close() {
      isClosed = true;
      await begun?.destroy();
    },
  };
}

const filename = new URL('./estimateWorker.mjs', import.meta.url).href;
const keepWarmMs = 10 * 60 * 1000;
