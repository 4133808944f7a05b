import { readlinkSync } from 'node:fs';
import { getPriority } from 'node:os';
import { basename } from 'node:path';
import { Refusal } from '#store/Refusal.ts';
import { jobTable, type Workplace } from '../job.ts';

/** A door that a job waits at until it is opened, from another thread too. */
export type Gate = SharedArrayBuffer;
const gateBytes = 4;

export function newGate(): Gate {
  return new SharedArrayBuffer(gateBytes);
}

export function open(gate: Gate): void {
  Atomics.store(new Int32Array(gate), 0, 1);
  Atomics.notify(new Int32Array(gate), 0);
}

const aMinuteMs = 60_000;

/** Jobs that end when they are told to, or badly. */
export const work = jobTable({
  module: new URL('./testJobs.ts', import.meta.url).href,
  lanes: {
    narrow: { threads: 1, keepWarmMs: aMinuteMs },
    waitedFor: { threads: 1, keepWarmMs: aMinuteMs, isWaitedFor: true },
    wide: { threads: 2, keepWarmMs: aMinuteMs },
  },
  jobs: {
    waitAtNarrow: { lane: 'narrow', run: waitAt },
    waitAtWide: { lane: 'wide', run: waitAt },
    rankOfNarrow: { lane: 'narrow', run: rank },
    rankOfWaitedFor: { lane: 'waitedFor', run: rank },
    echo: { lane: 'narrow', run: async (word: string) => word },
    count: {
      lane: 'narrow',
      run: async (upTo: number, { tell }: Workplace) => {
        for (let i = 1; i <= upTo; i += 1) tell(i, upTo);
        return upTo;
      },
    },
    fail: {
      lane: 'narrow',
      run: async (message: string): Promise<never> => {
        throw new TypeError(message);
      },
    },
    failInDatabase: {
      lane: 'narrow',
      run: async (query: string): Promise<never> => {
        const { default: Database } = await import('better-sqlite3');
        new Database(':memory:').exec(query);
        throw new Error('The database let it pass.');
      },
    },
    refuse: {
      lane: 'narrow',
      run: async (message: string): Promise<never> => {
        throw new Refusal('conflict', 'field', message);
      },
    },
    endThread: {
      lane: 'narrow',
      run: async (code: number): Promise<never> => process.exit(code),
    },
  },
});

/** How far this thread gives way. */
async function rank(): Promise<number> {
  return getPriority(Number(basename(readlinkSync('/proc/thread-self'))));
}

async function waitAt({ gate, answer }: { gate: Gate; answer: string }): Promise<string> {
  Atomics.wait(new Int32Array(gate), 0, 0);
  return answer;
}
