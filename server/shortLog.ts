import type { RunWork } from '#server/jobs/jobs.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/**
 * Keeps the write-ahead log of the club's file short while the program runs, from a thread: SQLite itself would do so in the midst of
 * one write of many, and whoever is answered would wait for the disk. Until the returned function is called.
 */
export function keepLogShort(store: ClubStore, run: RunWork, onFault: (error: unknown) => void): () => void {
  // A club in memory has no file.
  if (store.mark === null) return () => {};
  const { path, mark } = store;
  let timer: NodeJS.Timeout | undefined;
  let isStopped = false;

  async function empty(): Promise<void> {
    try {
      if (store.trouble() === null) await run('emptyLog', { path, mark });
    } catch (error) {
      // A file that is gone is told of by the store.
      if (store.trouble() === null) onFault(error);
    } finally {
      timer = undefined;
    }
  }

  const stopListening = store.onChange(() => {
    if (!isStopped) timer ??= setTimeout(empty, afterMs).unref();
  });
  return () => {
    isStopped = true;
    stopListening();
    clearTimeout(timer);
  };
}

/** Of sixty who log a set a second some thousand pages are written until then. */
const afterMs = 2000;
