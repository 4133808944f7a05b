import type { RunWork } from '#server/jobs/jobs.ts';
import { runHere } from '#server/jobs/runHere.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** A file that was taken away can still be read here, where it is open, and by nobody else. */
export function whereReadable(store: ClubStore, run: RunWork): RunWork {
  return store.trouble() === null ? run : runHere(store);
}
