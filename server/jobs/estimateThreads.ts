import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { WholeAsked } from '#reckon/strength/weighAndRemember.ts';
import { lazyThreads } from './lazyThreads.ts';
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
  const threads = lazyThreads(worker, keepWarmMs, count);
  return {
    estimateLift: (asked) => threads.run(asked),
    weighLift: (asked) => threads.run(asked, 'weigh'),
    followCapacity: (asked) => threads.run(asked, 'followCapacity'),
    close: threads.close,
  };
}

const worker = new URL('./estimateWorker.mjs', import.meta.url);
const keepWarmMs = 10 * 60 * 1000;
