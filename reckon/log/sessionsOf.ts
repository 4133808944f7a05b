import { setupKey } from '#contract/log/setupKey.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** What a lifter did with one exact setup on one day, in the order of the sets. */
export interface Session {
  doneOn: string;
  /** See `setupKey`. */
  key: string;
  sets: LoggedSet[];
}

/** One lifter's log by day and setup, the newest day first; struck sets are left out. */
export function sessionsOf(sets: readonly LoggedSet[]): Session[] {
  const sessions = new Map<string, Session>();
  for (const set of sets.toSorted((a, b) => a.order - b.order)) {
    if (set.struckAt !== null) continue;
    const key = setupKey(set);
    const id = `${set.doneOn} ${key}`;
    const known = sessions.get(id);
    if (known) known.sets.push(set);
    else sessions.set(id, { doneOn: set.doneOn, key, sets: [set] });
  }
  return [...sessions.values()].sort((a, b) => b.doneOn.localeCompare(a.doneOn));
}

/** The newest session of each setup, the newest first. */
export function lastSessions(sessions: readonly Session[]): Session[] {
  const seen = new Set<string>();
  return sessions.filter(({ key }) => !seen.has(key) && seen.add(key));
}
