import { Piscina } from 'piscina';
import type { WholeAsked } from '#contract/estimate/weighAndRemember.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import type { FollowCapacity } from './seasonCapacity.ts';

export type EstimateLift = (asked: Omit<WholeAsked, 'basis'>) => Promise<StrengthEstimate | null>;

/** The same with what it takes to go on from it, written as bytes. */
type WeighLift = (asked: WholeAsked) => Promise<{ estimate: StrengthEstimate; state: Uint8Array } | null>;

/** One thread for each core of a common small computer; more would only slow down the screens. */
export const estimateThreadCount = 2;

/** Estimates lifts, and follows work capacity, in threads of their own, begun when first asked for. */
export function estimateThreads(count = estimateThreadCount): {
  estimateLift: EstimateLift;
  weighLift: WeighLift;
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
    weighLift: (asked) => threads().run(asked, { name: 'weigh' }),
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
