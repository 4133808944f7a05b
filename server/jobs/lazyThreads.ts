import { Piscina } from 'piscina';

export interface LazyThreads {
  /** The worker's own work, or the one that it exports by a name. */
  run<Answer>(asked: unknown, name?: string): Promise<Answer>;
  close(): Promise<void>;
}

/** Threads for one worker file, begun when first asked for, so that the server is up before they are, and gone some time after. */
export function lazyThreads(worker: URL, keepWarmMs: number, count = 1): LazyThreads {
  let threads: Piscina | undefined;
  return {
    run(asked, name) {
      threads ??= new Piscina({
        filename: worker.href,
        minThreads: 0,
        maxThreads: count,
        idleTimeout: keepWarmMs,
        resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB },
      });
      return threads.run(asked, name === undefined ? {} : { name });
    },
    async close() {
      await threads?.destroy();
    },
  };
}

/** Work on many short lists of numbers is a quarter faster where their memory is swept less often. */
const YOUNG_MB = 192;
