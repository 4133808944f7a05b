import { once } from 'node:events';
import type { Server } from 'node:http';
import { fileURLToPath } from 'node:url';
import { createAdaptorServer } from '@hono/node-server';
import type { ClubStore } from '#store/ClubStore.ts';
import { snapshotFolderOf } from '#store/copies/keptCopies.ts';
import { createApp } from './app.ts';
import { CannotListen } from './CannotListen.ts';
import { clubCalendar } from './calendar/clubCalendar.ts';
import { telephoneDoor } from './calendar/telephoneDoor.ts';
import { snapshotKeeper } from './copies/snapshotKeeper.ts';
import { answerUnreadable } from './guard/answerUnreadable.ts';
import { rehearseDay } from './jobs/dayPlans.ts';
import { type RunWork, work } from './jobs/jobs.ts';
import { keptAnswers, nothingKept } from './jobs/keptAnswers.ts';
import { reckoningMark } from './jobs/reckoningMark.ts';
import { workThreads } from './jobs/threads.ts';
import { keepLogShort } from './shortLog.ts';
import { type StrengthEstimator, strengthEstimator } from './strength/strengthEstimator.ts';

export interface ServeOptions {
  store: ClubStore;
  /** The port to try first; the next free one is taken when others have it. */
  port?: number;
  /** Folder of the built screens. */
  webRoot?: string;
  /** Where snapshots of the club are put; without it, beside its file. */
  snapshotFolder?: string;
  /** Where in the local network telephones may read the calendar; without it, nowhere. */
  telephones?: { address: string; port: number };
}

export interface Served {
  /** The address to open: http://127.0.0.1:4747 */
  url: string;
  port: number;
  /** Settled when everybody's strength was worked out for the first time, or could not be. */
  everybodyKnown: Promise<void>;
  /** How far that is. */
  progress: StrengthEstimator['progress'];
  /** Where telephones read the calendar, without the secret part; null: nowhere. */
  calendarAt: string | null;
  /** Ends every open connection and stops listening; the store stays open. */
  close(): Promise<void>;
}

/** Answers on this machine alone until it is closed; beside it, where that is asked for, calendars alone to the local network. */
export async function serve({
  store,
  port = defaultPort,
  webRoot = builtScreens,
  snapshotFolder = snapshotFolderOf(store.path),
  telephones,
}: ServeOptions): Promise<Served> {
  const calendar = clubCalendar(store);
  const door = telephones ? await telephoneDoor(store, calendar, telephones) : null;
  const { run, close: endThreads } = workThreads(work);
  // A club in memory has no file that anything could be kept beside.
  const keepIn = store.mark === null ? nothingKept : keptAnswers(store.path, await reckoningMark());
  let isClosed = false;
  /** What is under way when the server ends may find its club closed: nobody waits for it any more. */
  const onFault = (error: unknown) => {
    if (!isClosed) console.error(error);
  };
  const estimator = strengthEstimator(store, run, { goesOn: true, keepIn, patienceMs });
  // Somebody will look at everybody soon; until then nobody hears of a fault.
  const estimateAll = () => store.today().then(estimator.bringUpToDate).catch(onFault);
  const snapshots = snapshotKeeper(store, run, snapshotFolder);
  const app = createApp({
    store,
    webRoot,
    run,
    keepIn,
    snapshots,
    estimator,
    calendar,
    telephones: door,
    onFilled: () => void estimateAll(),
  });
  const server = createAdaptorServer({ fetch: app.fetch }) as Server;
  answerUnreadable(server);
  const { records } = await store.records();
  const taken = await listen(server, port).catch(async (error) => {
    await door?.close();
    throw error;
  });
  // A coach who has just opened the program asks for the loads of a day before long.
  const begun = rehearseDay(run, records).catch(onFault).then(estimateAll);
  const everybodyKnown = begun
    .then(async () => {
      if (estimator.progress().running) await estimator.ofClub(await store.today());
    })
    // What fails of it was told where it was begun; where the program ended meanwhile there is nothing to tell.
    .catch(() => {});
  snapshots.start();
  const leaveLog = keepLogShort(store, run, onFault);
  checkBehind(store, run).catch(onFault);
  return {
    url: `http://${host}:${taken}`,
    port: taken,
    everybodyKnown,
    progress: estimator.progress,
    calendarAt: door?.at ?? null,
    async close() {
      isClosed = true;
      estimator.stop();
      snapshots.stop();
      leaveLog();
      const closed = once(server, 'close');
      server.close();
      server.closeAllConnections();
      await Promise.all([closed, endThreads(), door?.close()]);
      await keepIn.written();
    },
  };
}

/** Looks through the whole file while everything is answered; what is found stops all saving. */
async function checkBehind(store: ClubStore, run: RunWork): Promise<void> {
  // A club in memory has no file, and one that is gone is told of as that.
  if (store.mark === null || store.trouble() !== null) return;
  const damage = await run('checkWhole', { path: store.path }).catch((error: unknown) => {
    if (store.trouble() === null) throw error;
    return null;
  });
  if (damage !== null) store.stopWriting(damage);
}

const host = '127.0.0.1';
/** A coach who asks for the loads of a day gets them; what the log says of its lifters may follow. */
const patienceMs = 1500;
const defaultPort = 4747;
const portsTried = 50;
const builtScreens = fileURLToPath(new URL('../web/dist', import.meta.url));

const mostPort = 65_535;

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
      const code = error instanceof Error && 'code' in error ? error.code : null;
      if (code === 'EACCES')
        throw new CannotListen(
          `Port ${port} may not be used by this user; choose one above 1023 with --port.`,
        );
      if (code !== 'EADDRINUSE') throw error;
      if (port >= Math.min(first + portsTried, mostPort))
        throw new CannotListen(
          `The ports ${first} to ${port} are all in use; end another program or choose another port with --port.`,
        );
    }
  }
}
