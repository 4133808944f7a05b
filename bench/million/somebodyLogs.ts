import { setTimeout as pause } from 'node:timers/promises';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { line } from '../crowd/line.ts';

const PAUSE_MS = 500;

/** Logs a set twice a second until the returned function is called, which says how long the longest waited and how many were refused. */
export function somebodyLogs(url: string, { lifterId, doneOn, lift, setup }: LoggedSet) {
  const asked = line(url, 1);
  let [mostMs, refused, goesOn] = [0, 0, true];
  const logging = (async () => {
    while (goesOn) {
      const sent = { lifterId, doneOn, lift, setup, reps: 1, made: 1, bodyMassKg: null, note: 'bench' };
      const { ms, status } = await asked.send('/api/sets', { sets: [sent] });
      mostMs = Math.max(mostMs, ms);
      if (status >= 400) refused += 1;
      await pause(PAUSE_MS);
    }
  })();
  return async () => {
    goesOn = false;
    await logging;
    asked.close();
    return { mostMs, refused };
  };
}
