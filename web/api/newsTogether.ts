import { oneAtATime } from './oneAtATime.ts';

/**
 * Fetches what news name, all of one moment together: they come as events one after the other, and what a change brings need not be asked
 * for twice. News that come meanwhile are fetched after it.
 */
export function newsTogether<Name extends string>(
  fetchNamed: (named: ReadonlySet<Name>) => Promise<void>,
): (name: Name) => void {
  const heard = new Set<Name>();
  const fetchHeard = oneAtATime(async () => {
    // What came in the same piece is heard before a timer goes off.
    await new Promise((resolve) => setTimeout(resolve));
    const named = new Set(heard);
    heard.clear();
    if (named.size > 0) await fetchNamed(named);
  });
  return (name) => {
    heard.add(name);
    fetchHeard();
  };
}
