import { type MessagePort, workerData } from 'node:worker_threads';
import { type CarriedFault, carriedFault } from './carriedFault.ts';
import { throughDoor } from './clubDoor.ts';
import { giveWay } from './giveWay.ts';
import type { Job, Workplace } from './job.ts';

/** What a thread is begun with: the address of its table of jobs, and whether these are waited for. */
export interface Begun {
  table: string;
  isWaitedFor: boolean;
}

/** What a thread is sent: the name of a job and what it is asked, which the sender's types hold together. */
export interface Sent {
  name: string;
  asked: unknown;
  /** Where it tells how far it is. */
  progress: MessagePort | null;
}

export type Reply = { answer: unknown } | { fault: CarriedFault };

const { table, isWaitedFor } = workerData as Begun;
if (!isWaitedFor) giveWay();

/** Does one job of the table that the thread was begun with. */
export async function runInThread({ name, asked, progress }: Sent): Promise<Reply> {
  const { work } = (await import(table)) as { work: { jobs: Record<string, Job<unknown, unknown>> } };
  const tell: Workplace['tell'] = (...told) => progress?.postMessage(told, []);
  try {
    return { answer: await work.jobs[name]!.run(asked, { tell, throughDoor }) };
  } catch (error) {
    return { fault: carriedFault(error) };
  } finally {
    progress?.close();
  }
}
