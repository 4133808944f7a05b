import { EventEmitter } from 'node:events';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { type CopyFile, keptCopies } from '#store/copies/keptCopies.ts';

/** Takes snapshots of a club while the program runs. */
export interface SnapshotKeeper {
  folder: string;
  /** Why the last one could not be taken, as one sentence; null: nothing went wrong. */
  fault(): string | null;
  /** Takes one now. */
  take(): Promise<CopyFile>;
  /** Takes one where the last is an hour old and something was changed since. */
  takeWhereDue(): Promise<void>;
  /** Calls back when one was taken or could not be, until the returned function is called. */
  onNews(listener: () => void): () => void;
  /** From now on that is seen to each minute. */
  start(): void;
  stop(): void;
}

/** `folder`: where they are put, beside the club's file or on another disk. */
export function snapshotKeeper(store: ClubStore, run: RunWork, folder: string): SnapshotKeeper {
  let fault: string | null = null;
  let timer: NodeJS.Timeout | undefined;
  let isStopped = false;
  const news = new EventEmitter<{ news: [] }>().setMaxListeners(0);

  async function newest(): Promise<CopyFile | undefined> {
    return (await keptCopies(store.path, folder)).find(({ kind }) => kind === 'snapshot');
  }

  async function take(): Promise<CopyFile> {
    try {
      const { name } = await run('takeSnapshot', { path: store.path, folder });
      fault = null;
      return (await keptCopies(store.path, folder)).find((copy) => copy.name === name)!;
    } catch (error) {
      fault = error instanceof Error ? error.message : String(error);
      throw error;
    } finally {
      news.emit('news');
    }
  }

  /** A club in memory has no file, and one whose file is gone is told of elsewhere; what has not changed needs no second copy. */
  async function takeWhereDue(): Promise<void> {
    if (store.mark === null || store.trouble() !== null) return;
    const last = await newest();
    const age = last ? Date.now() - Date.parse(last.takenAt) : Number.POSITIVE_INFINITY;
    // A clock that was put back would else keep the next one waiting.
    const isDue = age >= everyMs || age < 0;
    if (isDue && !isStopped && last?.seq !== (await store.latestSeq())) await take();
  }

  const look = () =>
    void takeWhereDue().catch((error) => {
      if (!isStopped) console.error(fault ?? error);
    });
  return {
    folder,
    fault: () => fault,
    take,
    takeWhereDue,
    onNews(listener) {
      news.on('news', listener);
      return () => news.off('news', listener);
    },
    start() {
      look();
      timer = setInterval(look, lookEveryMs).unref();
    },
    stop() {
      isStopped = true;
      clearInterval(timer);
    },
  };
}

const everyMs = 3_600_000;
const lookEveryMs = 60_000;
