import { Piscina } from 'piscina';

export interface LazyThreads {
  /** The worker's own work, or the one that it exports by a name. */
  run<Answer>(asked: unknown, name?: string): Promise<Answer>;
  close(): Promise<void>;
}

/** Threads for one worker file, begun when first asked for, so that the server is up before they are, and gone some time after. */
export function lazyThreads(worker: URL, keepWarmMs: number, count = 1): LazyThreads {
  let threads: Piscina | undefined;
  let isClosed = false;
  return {
    async run(asked, name) {
      threads ??= new Piscina({
        filename: worker.href,
        minThreads: 0,
        maxThreads: count,
        idleTimeout: keepWarmMs,
        resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB },
      });
      try {
        return await threads.run(asked, name === undefined ? {} : { name });
      } catch (error) {
        // When the server ends, whoever asked is gone already.
        return isClosed ? new Promise(() => {}) : Promise.reject(error);
      }
    },
    async close() {
      isClosed = true;
      await threads?.destroy();
    },
  };
}

/** Work on many short lists of numbers is a quarter faster where their memory is swept less often. */
const YOUNG_MB = 192;
