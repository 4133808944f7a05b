import { MessageChannel, type MessagePort, receiveMessageOnPort } from 'node:worker_threads';
import { Piscina } from 'piscina';
import type { Tell } from '#contract/words/doing.ts';
import { faultOf } from './carriedFault.ts';
import { inTurn } from './inTurn.ts';
import type { AnswerIn, AskedIn, HowRun, JobTable, Lane, NameIn, RunIn } from './job.ts';
import type { Begun, Reply, Sent } from './runInThread.ts';
import { threadCode } from './threadCode.ts';
import { AskerLeft } from './waiting.ts';

export interface Threads<Table extends JobTable> {
  run: RunIn<Table>;
  /** Ends every thread; who still waits for an answer hears nothing more. */
  close(): Promise<void>;
}

/**
 * Runs jobs in threads, those of a lane in the order in which they were asked for. Their code is translated and threads are begun when first
 * asked for, so that the server is up before they are, and gone some time after. A job whose signal is aborted ends with its thread, and a new thread
 * does the next. `threadsIn`: lanes that get another number of threads than the table says.
 */
export function workThreads<Table extends JobTable>(
  { module, lanes, jobs }: Table,
  threadsIn: { [Name in keyof Table['lanes']]?: number } = {},
): Threads<Table> {
  const laneOf = new Map(
    Object.entries(lanes).map(([name, lane]) => {
      const threads = threadsIn[name] ?? lane.threads;
      return [name, { inItsTurn: inTurn(threads), pool: lazyPool(module, { ...lane, threads }) }] as const;
    }),
  );
  let isClosed = false;

  async function run<Name extends NameIn<Table>>(
    name: Name,
    asked: AskedIn<Table, Name>,
    { signal, tell }: HowRun = {},
  ): Promise<AnswerIn<Table, Name>> {
    const { inItsTurn, pool } = laneOf.get(jobs[name]!.lane)!;
    let reply: Reply;
    try {
      reply = await inItsTurn(async () => {
        return isClosed
          ? never
          : withProgress(tell, (progress) => pool.run({ name, asked, progress }, signal));
      });
    } catch (error) {
      // When the server ends, whoever asked is gone already.
      if (isClosed) return never;
      if (signal?.aborted) throw new AskerLeft();
      const said = error instanceof Error ? error.message : String(error);
      throw new Error(`${name} failed in its thread: ${said}`, { cause: error });
    }
    if ('fault' in reply) throw faultOf(reply.fault, name);
    return reply.answer as AnswerIn<Table, Name>;
  }

  return {
    run,
    async close() {
      isClosed = true;
      await Promise.all([...laneOf.values()].map(({ pool }) => pool.close()));
    },
  };
}

const never = new Promise<never>(() => {});

function lazyPool(module: string, { threads, keepWarmMs, isWaitedFor = false }: Lane) {
  let pool: Promise<Piscina<Sent, Reply>> | undefined;
  async function begun() {
    const { entry, table } = await threadCode(module);
    return new Piscina<Sent, Reply>({
      filename: entry,
      name: 'runInThread' satisfies keyof typeof import('./runInThread.ts'),
      workerData: { table, isWaitedFor } satisfies Begun,
      minThreads: 0,
      maxThreads: threads,
      idleTimeout: keepWarmMs,
      resourceLimits: { maxYoungGenerationSizeMb: youngMb },
    });
  }
  return {
    async run(sent: Sent, signal: AbortSignal | undefined): Promise<Reply> {
      pool ??= begun().catch((error) => {
        pool = undefined;
        throw error;
      });
      return (await pool).run(sent, {
        ...(signal && { signal }),
        ...(sent.progress && { transferList: [sent.progress] }),
      });
    },
    close: async () => (await pool)?.destroy(),
  };
}

/** Work on many short lists of numbers is a quarter faster where their memory is swept less often. */
export const youngMb = 192;

/** All that is told is heard before the answer. */
async function withProgress(
  tell: Tell | undefined,
  run: (progress: MessagePort | null) => Promise<Reply>,
): Promise<Reply> {
  if (tell === undefined) return run(null);
  const { port1: hears, port2: tells } = new MessageChannel();
  hears.on('message', (told: Parameters<Tell>) => tell(...told));
  try {
    return await run(tells);
  } finally {
    for (let more = receiveMessageOnPort(hears); more; more = receiveMessageOnPort(hears))
      tell(...(more.message as Parameters<Tell>));
    hears.close();
  }
}
