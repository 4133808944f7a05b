import { once } from 'node:events';
import type { Server } from 'node:http';
import { fileURLToPath } from 'node:url';
import { createAdaptorServer } from '@hono/node-server';
import type { ClubStore } from '#store/ClubStore.ts';
import { createApp } from './app.ts';
import { backtester } from './jobs/backtester.ts';
import { daySolver } from './jobs/daySolver.ts';
import { estimateThreads } from './jobs/estimateThreads.ts';
import { evidenceWeigher } from './jobs/evidenceWeigher.ts';
import { importThread } from './jobs/importThread.ts';
import { liftThreads } from './jobs/liftThreads.ts';
import { strengthEstimator } from './jobs/strengthEstimator.ts';

export interface ServeOptions {
  store: ClubStore;
  /** The port to try first; the next free one is taken when others have it. */
  port?: number;
  /** Folder of the built screens. */
  webRoot?: string;
}

export interface Served {
  /** The address to open: http://127.0.0.1:4747 */
  url: string;
  port: number;
  /** Ends every open connection and stops listening; the store stays open. */
  close(): Promise<void>;
}

/** Answers on this machine alone until it is closed. */
export async function serve({
  store,
  port = defaultPort,
  webRoot = builtScreens,
}: ServeOptions): Promise<Served> {
  const solver = daySolver();
  const weigher = evidenceWeigher();
  const importer = importThread();
  const threads = estimateThreads();
  const lifts = liftThreads(threads);
  const estimator = strengthEstimator(store, lifts, patienceMs);
  // In a thread of its own: what a screen waits for does not queue behind hundreds of past meets.
  const backThreads = estimateThreads(1);
  const backtests = backtester(store, backThreads.estimateLift);
  const app = createApp({
    store,
    webRoot,
    solveDay: solver.solveDay,
    planByLog: solver.planByLog,
    weighEvidence: weigher.weighEvidence,
    takeFileIn: importer.importLog,
    estimator,
    followCapacity: threads.followCapacity,
    backtests,
    // Somebody will look at everybody soon; until then nobody hears of a fault.
    onFilled: () => void store.today().then(estimator.bringUpToDate).catch(console.error),
  });
  const server = createAdaptorServer({ fetch: app.fetch }) as Server;
  const { records } = await store.records();
  const taken = await listen(server, port);
  // A coach who has just opened the program asks for the loads of a day before long.
  solver.rehearse(records).catch(console.error);
  return {
    url: `http://${host}:${taken}`,
    port: taken,
    async close() {
      estimator.stop();
      backtests.stop();
      const closed = once(server, 'close');
      server.close();
      server.closeAllConnections();
      await Promise.all([
        closed,
        solver.close(),
        weigher.close(),
        importer.close(),
        threads.close(),
        lifts.close(),
        backThreads.close(),
      ]);
    },
  };
}

const host = '127.0.0.1';
/** A coach who asks for the loads of a day gets them; what the log says of its lifters may follow. */
const patienceMs = 1500;
const defaultPort = 4747;
const portsTried = 50;
const builtScreens = fileURLToPath(new URL('../web/dist', import.meta.url));

/** Listens on the first free port from `first` on (0: any), and says which. */
async function listen(server: Server, first: number): Promise<number> {
  for (let port = first; ; port += 1) {
    try {
      await new Promise<void>((resolve, reject) => {
        server.once('error', reject);
        server.listen(port, host, () => {
          server.off('error', reject);
          resolve();
        });
      });
      const address = server.address();
      return typeof address === 'object' && address ? address.port : port;
    } catch (error) {
      const inUse = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
      if (!inUse || port >= first + portsTried) throw error;
    }
  }
}
