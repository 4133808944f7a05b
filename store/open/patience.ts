import { resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { Refusal } from '../Refusal.ts';
import { type Holder, whoHolds } from './whoHolds.ts';

/** Waits for a file that something else is writing, without ever keeping this thread from its other work. */
export interface Patience {
  /** Tries `work` again as long as the file is locked; refused with one sentence after `patienceMs` from now. */
  patiently<T>(work: () => T | Promise<T>): Promise<T>;
  /** The same, once everything that was asked in order before has ended: nobody overtakes, and others have their turn at the file too. */
  inOrder<T>(work: () => Promise<T>): Promise<T>;
  /** Does what holds the file through another door of this program, behind all that stands in line: who waits meanwhile waits for its end. */
  behindWrites<T>(work: () => Promise<T>): Promise<T>;
}

/** The patience with one file. Work that was refused the lock has done nothing that lasts, so that it may be tried again as a whole. */
export function patienceWith(path: string, patienceMs: number): Patience {
  let last: Promise<unknown> = Promise.resolve();
  /** When the last turn ended, and until when the file was last left to others for long enough. */
  let endedMs = performance.now();
  let leftMs = endedMs;
  /** How many works hold the file that this program itself has begun, and when the last of them ended. */
  let own = { count: 0, endedMs: Number.NEGATIVE_INFINITY };

  async function until<T>(endMs: number, work: () => T | Promise<T>): Promise<T> {
    for (let tries = 0; ; tries += 1) {
      try {
        return await work();
      } catch (error) {
        if (!isLocked(error)) throw error;
        const isOver = performance.now() >= Math.max(endMs, own.endedMs + patienceMs);
        if (isOver && own.count === 0) throw heldByAnother(path);
      }
      await pause(pausesMs[Math.min(tries, pausesMs.length - 1)]);
    }
  }

  /** Others find out by trying now and then: one turn right after the other would never let them in. */
  async function leaveToOthers(): Promise<void> {
    const nowMs = performance.now();
    if (nowMs - endedMs >= breathMs) leftMs = nowMs;
    if (nowMs - leftMs < heldAtMostMs) return;
    await pause(breathMs);
    leftMs = performance.now();
  }

  return {
    patiently: (work) => until(performance.now() + patienceMs, work),
    inOrder(work) {
      // Counted from when it was asked: who stood in line behind others has waited as long as they have.
      const endMs = performance.now() + patienceMs;
      const turn = last.then(async () => {
        await leaveToOthers();
        return until(endMs, work);
      });
      last = turn
        .catch(() => {})
        .then(() => {
          endedMs = performance.now();
        });
      return turn;
    },
    async behindWrites(work) {
      await last;
      own.count += 1;
      try {
        return await work();
      } finally {
        own = { count: own.count - 1, endedMs: performance.now() };
      }
    },
  };
}

/** Short at first: most who hold the file are done in a moment. */
const pausesMs = [1, 2, 5];
/** So long the writes of one line follow each other, and so long the file is then free: longer than the longest pause of who waits. */
const heldAtMostMs = 60;
const breathMs = 8;

function isLocked(error: unknown): boolean {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_BUSY');
}

function heldByAnother(path: string): Refusal {
  return new Refusal('unavailable', '', heldInWords(resolve(path), whoHolds(path)));
}

function heldInWords(file: string, holder: Holder | null): string {
  if (holder === 'thisProcess')
    return `The club's file ${file} is busy: this program itself takes a large file in, or puts another club in its place. Nothing was changed; wait until that is done, then try again.`;
  if (holder === null)
    return `Something else holds the club's file ${file}: another program that writes to it, or a large import that goes on. Nothing was changed; end it or wait for it, then try again.`;
  return `The club's file ${file} is held by another program that writes to it: ${holder.command} (process ${holder.pid}). Nothing was changed; end that program or wait for it, then try again.`;
}
