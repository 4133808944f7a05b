import { resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { Refusal } from '../Refusal.ts';

/** Waits for a file that something else is writing, without ever keeping this thread from its other work. */
export interface Patience {
  /** Tries `work` again as long as the file is locked; refused with one sentence after `patienceMs` from now. */
  patiently<T>(work: () => T | Promise<T>): Promise<T>;
  /** The same, once everything that was asked in order before has ended: nobody overtakes. */
  inOrder<T>(work: () => Promise<T>): Promise<T>;
}

/** The patience with one file. Work that was refused the lock has done nothing that lasts, so that it may be tried again as a whole. */
export function patienceWith(path: string, patienceMs: number): Patience {
  let last: Promise<unknown> = Promise.resolve();

  async function until<T>(endMs: number, work: () => T | Promise<T>): Promise<T> {
    for (let tries = 0; ; tries += 1) {
      try {
        return await work();
      } catch (error) {
        if (!isLocked(error)) throw error;
        if (performance.now() >= endMs) throw heldByAnother(path);
      }
      await pause(pausesMs[Math.min(tries, pausesMs.length - 1)]);
    }
  }

  return {
    patiently: (work) => until(performance.now() + patienceMs, work),
    inOrder(work) {
      // Counted from when it was asked: who stood in line behind others has waited as long as they have.
      const endMs = performance.now() + patienceMs;
      const turn = last.then(() => until(endMs, work));
      last = turn.catch(() => {});
      return turn;
    },
  };
}

/** Short at first: most who hold the file are done in a moment. */
const pausesMs = [1, 2, 5, 10, 20];

function isLocked(error: unknown): boolean {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_BUSY');
}

function heldByAnother(path: string): Refusal {
  const sentence = `Something else holds the club's file ${resolve(path)}: another program that writes to it, or a large import that goes on. Nothing was changed; end it or wait for it, then try again.`;
  return new Refusal('unavailable', '', sentence);
}
