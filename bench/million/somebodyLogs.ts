import { randomUUID } from 'node:crypto';
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
      const id = `bench-${randomUUID()}`;
      const set = { id, lifterId, doneOn, lift, setup, reps: 1, made: 1, bodyMassKg: null, note: 'bench' };
      const send = () => asked.send('/api/sets', { sets: [set] });
      const from = performance.now();
      // A server that stood still for longer than it keeps an idle connection (5 s) closes it unread; sent again it is the same set.
      const answer = await send()
        .catch(send)
        .catch(() => null);
      if (answer === null || answer.status >= 400) seen.refused += 1;
      else seen.mostMs = Math.max(seen.mostMs, performance.now() - from);
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
