import { useEffect } from 'react';

/** The page in sight is drawn and readable by then, on a slow phone too (ms). */
const afterMs = 2500;

/** Fetches the code of pages that may be opened next, a moment after the page in sight. `load` stays the same. */
export function useFetchedAhead(load: () => Promise<unknown>): void {
  useEffect(() => {
    // What could not be fetched ahead is asked for again, and says so, when it is opened.
    const timer = setTimeout(() => void load().catch(() => {}), afterMs);
    return () => clearTimeout(timer);
  }, [load]);
}
