import { setTimeout as pause } from 'node:timers/promises';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { line } from '../crowd/line.ts';

const PAUSE_MS = 500;

/**
 * Logs a set twice a second, everybody in turn since a day takes so many of one lifter and no more, until the returned function is called: it says
 * how long the longest waited and how many were refused.
 */
export function somebodyLogs(url: string, { doneOn, lift, setup }: LoggedSet, lifterIds: readonly string[]) {
  const asked = line(url, 1);
  const seen = { mostMs: 0, refused: 0 };
  const end = new AbortController();
  const logging = (async () => {
    for (let i = 0; !end.signal.aborted; i += 1) {
      const lifterId = lifterIds[i % lifterIds.length];
      const sent = { lifterId, doneOn, lift, setup, reps: 1, made: 1, bodyMassKg: null, note: 'bench' };
      const answer = await asked.send('/api/sets', { sets: [sent] }).catch(() => null);
      if (answer === null || answer.status >= 400) seen.refused += 1;
      else seen.mostMs = Math.max(seen.mostMs, answer.ms);
      await pause(PAUSE_MS);
    }
  })();
  return async () => {
    end.abort();
    await logging;
    asked.close();
    return seen;
  };
}
