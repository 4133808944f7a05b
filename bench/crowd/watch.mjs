/**
 * Loaded into the server that is measured, before it: says how long the thread that answers stood still, how long of that it was at work
 * itself, how much memory there is and how much processor was used, when asked by who started it. With a folder in `BENCH_PROFILES` what
 * the thread did is written there.
 */
import { openSync, readSync, writeFileSync } from 'node:fs';
import { Session } from 'node:inspector/promises';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { isMainThread } from 'node:worker_threads';

const BEAT_MS = 2;
const profiles = process.env.BENCH_PROFILES;

/** How long the thread that answers was at work and how long it waited for a processor, s; nothing where Linux does not say so. */
const answering = scheduledOf(`/proc/self/task/${process.pid}/schedstat`);

function scheduledOf(path) {
  try {
    const file = openSync(path);
    const bytes = Buffer.alloc(100);
    return () => {
      const [atWork, waited] = bytes
        .toString('latin1', 0, readSync(file, bytes, 0, bytes.length, 0))
        .split(' ');
      return [Number(atWork) / 1e9, Number(waited) / 1e9];
    };
  } catch {
    return () => [Number.NaN, Number.NaN];
  }
}

if (isMainThread && process.send) {
  const stood = monitorEventLoopDelay({ resolution: BEAT_MS });
  stood.enable();
  let used = process.cpuUsage();
  let scheduled = answering();
  let most = 0;
  let longestTurnS = 0;
  let beatS = scheduled[0];
  // Between two beats lies one turn at least: what the thread was at work meanwhile is its own, whoever else had the processor.
  setInterval(() => {
    const [atWorkS] = answering();
    longestTurnS = Math.max(longestTurnS, atWorkS - beatS);
    beatS = atWorkS;
  }, BEAT_MS).unref();
  const look = () => {
    most = Math.max(most, process.memoryUsage.rss());
  };
  setInterval(look, 100).unref();
  let session;
  process.on('message', async ({ begin, end }) => {
    if (begin) {
      if (profiles) {
        session = new Session();
        session.connect();
        await session.post('Profiler.enable');
        await session.post('Profiler.start');
      }
      stood.reset();
      used = process.cpuUsage();
      scheduled = answering();
      most = 0;
      longestTurnS = 0;
      [beatS] = scheduled;
      look();
      process.send({ begun: true });
    }
    if (end) {
      look();
      const { user, system } = process.cpuUsage(used);
      const stalls = [50, 99, 100].map((share) => stood.percentile(share) / 1e6 - BEAT_MS);
      if (session) {
        const { profile } = await session.post('Profiler.stop');
        writeFileSync(join(profiles, `${end}.cpuprofile`), JSON.stringify(profile));
        session.disconnect();
        session = undefined;
      }
      const now = answering();
      const [answeringS, awaitedS] = now.map((value, i) => value - scheduled[i]);
      process.send({
        stalls,
        answeringS,
        awaitedS,
        longestTurnMs: 1000 * longestTurnS,
        cpuS: (user + system) / 1e6,
        mostBytes: most,
        bytes: process.memoryUsage.rss(),
      });
    }
  });
  process.channel.unref();
}
