import type { Session } from './sessions.ts';

/** The places where all misses of a log stopped count together as no more than so many. */
const WORTH = 4;

/**
 * Where a lifter's misses stop tells of the shape of their strength, but the shape has few parameters: a sticking region that
 * lies elsewhere than the model's moves all of a lifter's misses alike. Many of them therefore count as a few. Writes
 * into the groups.
 */
export function readStops(sessions: readonly Session[]): void {
  const stopped = sessions.flatMap(({ groups }) => groups).filter((group) => group.stopped.count > 0);
  for (const group of stopped) group.stopShare = Math.min(1, WORTH / stopped.length);
}
