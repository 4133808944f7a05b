import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { AnewAsked, BelievedAnew } from '#reckon/strength/believeAnew.ts';
import type { NewestAsked, NewestTaken } from '#reckon/strength/takeNewest.ts';
import type { WholeAsked } from '#reckon/strength/weighAndRemember.ts';
import type { EstimateLift, estimateThreads } from './estimateThreads.ts';
import { lazyThreads } from './lazyThreads.ts';

/** Which estimate is gone on from: its lift, and a number of its own. */
export interface Version {
  key: string;
  version: number;
}

/** Where lifts are estimated. */
export interface LiftThreads {
  /** By the whole log; what it takes to go on from there is remembered. */
  weigh(asked: WholeAsked, version: Version): Promise<StrengthEstimate | null>;
  /** The newest sets alone; null where that takes the whole log or nothing is remembered. */
  takeIn(asked: NewestAsked, version: Version): Promise<Omit<NewestTaken, 'remembered'> | null>;
  /** What is remembered under another prior; null where that takes the whole log. */
  believeAnew(asked: AnewAsked, version: Version): Promise<BelievedAnew | null>;
}

/**
 * The whole log is weighed in the given threads, and new sets are taken in by a thread of its own, to which each estimate is
 * handed over: a set that was just logged waits for no whole log. So is what the club has shown.
 */
export function liftThreads({
  weighLift,
}: Pick<ReturnType<typeof estimateThreads>, 'weighLift'>): LiftThreads & { close: () => Promise<void> } {
  const thread = lazyThreads(worker, keepWarmMs);
  /** Waited for before anything is asked of the thread: it may do what it was given later first. */
  let handedOver: Promise<unknown> = Promise.resolve();
  return {
    async weigh(asked, version) {
      const weighed = await weighLift(asked);
      if (weighed === null) return null;
      // Nobody waits for that; where it fails, new sets take the whole log.
      const handing = thread.run({ ...version, state: weighed.state }, 'remember');
      handedOver = Promise.allSettled([handedOver, handing]);
      return weighed.estimate;
    },
    async takeIn(asked, version) {
      await handedOver;
      return thread.run({ ...version, asked }, 'takeIn');
    },
    async believeAnew(asked, version) {
      await handedOver;
      return thread.run({ ...version, asked }, 'believeAnew');
    },
    close: thread.close,
  };
}

/** Every estimate by the whole log; nothing is remembered. */
export function byWholeLog(estimateLift: EstimateLift): LiftThreads {
  return { weigh: estimateLift, takeIn: async () => null, believeAnew: async () => null };
}

const worker = new URL('./takeInWorker.mjs', import.meta.url);
/** An evening of training with all its pauses. */
const keepWarmMs = 3 * 60 * 60 * 1000;
