import { useEffect, useState } from 'react';

/**
 * What code of its own gives, fetched once the page is drawn; null until then. What cannot be fetched is told as any fault of a screen.
 * `load` stays the same.
 */
export function useLoaded<Loaded>(load: () => Promise<Loaded>): Loaded | null {
  const [state, setState] = useState<{ loaded: Loaded } | { fault: unknown } | null>(null);
  useEffect(() => {
    load().then(
      (loaded) => setState({ loaded }),
      (fault: unknown) => setState({ fault }),
    );
  }, [load]);
  if (state === null) return null;
  if ('fault' in state) throw state.fault;
  return state.loaded;
}
