import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { localToday } from '#cli/localToday.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { openOneClub } from '#server/oneClub.ts';
import { bigClub, type ClubSize } from './club/bigClub.ts';
import { type Line, line } from './crowd/line.ts';
import { quantile } from './crowd/quantiles.ts';
import { shownBy } from './crowd/screen.ts';
import { type WatchedServer, watchedServer } from './crowd/watchedServer.ts';
import { mb } from './million/mb.ts';
import { somebodyLogs } from './million/somebodyLogs.ts';
import { type Whole, wholes } from './million/wholes.ts';

const TIMES = 100;
const DAY = 'day-speed-squat';
/** So many sets the invented club's lifters have each, whatever the size. */
const SETS_OF_LIFTER = 2500;
/** All that the invented club's days name. */
const FEWEST = 20;
const SIZES = [100_000, 1_000_000];

/**
 * The same program on a club of ten times as many: how long its file takes to fill, to start and to give a first answer, what every
 * screen asks for, and whatever reads or writes the whole club, with how long the thread that answers stood still and a set that
 * somebody logged waited meanwhile. What must not grow with the log is the same in both. `--sets 200000` measures one size alone.
 */
export async function run(): Promise<void> {
  const at = process.argv.indexOf('--sets');
  const asked = at < 0 ? SIZES : [Number(process.argv[at + 1])];
  for (const sets of asked) {
    const size = { lifters: Math.max(FEWEST, Math.round(sets / SETS_OF_LIFTER)), sets };
    const folder = await mkdtemp(join(tmpdir(), 'bench-'));
    try {
      await measure(join(folder, 'club.sqlite'), size);
    } finally {
      await rm(folder, { recursive: true });
    }
  }
}

async function measure(path: string, size: ClubSize): Promise<void> {
  const today = localToday();
  const { filledS, records, some } = await fill(path, size, today);
  const { size: bytes } = await stat(path);
  console.log(
    `${size.lifters} lifters, ${size.sets} sets: filled in ${filledS.toFixed(1)} s, ${mb(bytes)} on disk`,
  );
  const server = await watchedServer(path);
  try {
    const from = performance.now();
    const asked = line(server.url, 6);
    const { body } = await asked.ask('/api/club');
    console.log(
      `  the server answers after ${server.startS.toFixed(1)} s, the whole club (${mb(body.length)}) ${(performance.now() - from).toFixed(0)} ms later`,
    );
    await screens(asked, today);
    const at = {
      url: server.url,
      folder: dirname(path),
      asked,
      names: records.lifter.map(({ name }) => name),
    };
    for (const work of wholes) await whole(server, some, work, at);
    await estimates(asked, from);
    asked.close();
  } finally {
    await server.close();
  }
}

async function fill(path: string, size: ClubSize, today: string) {
  const { records, sets } = bigClub(size, today);
  const day = records.day.map((one) => (one.id === DAY ? { ...one, date: today } : one));
  const from = performance.now();
  const store = await openOneClub(path, { name: 'the bench' });
  await store.importRecords({ ...records, day }, { sets });
  await store.close();
  return { filledS: (performance.now() - from) / 1000, records, some: sets[0]! };
}

/** Each address of each screen, while the server works out everybody's strength behind. */
async function screens(asked: Line, today: string): Promise<void> {
  const { records } = JSON.parse((await asked.ask('/api/club')).body.toString());
  const shown = Object.values(shownBy(DAY, records.lifter[0].id, today)).flat();
  for (const path of [...new Set(shown.map((one) => one.path)), '/api/sets/days?words=knee', '/api/sets']) {
    // Estimates are told below.
    if (/estimates\?/.test(path)) continue;
    const answers = [];
    for (let i = 0; i < TIMES; i += 1) answers.push(await asked.ask(path));
    const ms = answers.map((answer) => answer.ms);
    console.log(
      `  ${path}: ${quantile(ms, 0.5).toFixed(1)} ms in the middle, ${quantile(ms, 0.99).toFixed(0)} ms one of a hundred, ${mb(answers[0]!.body.length)}`,
    );
  }
}

/** How far everybody's strength is since the start, and in proportion how long all of it takes. */
async function estimates(asked: Line, from: number): Promise<void> {
  const { done, total } = JSON.parse((await asked.ask('/api/estimates/progress')).body.toString());
  const sinceS = (performance.now() - from) / 1000;
  const allS =
    done > 0 ? `about ${((sinceS * total) / done).toFixed(0)} s foretold in proportion` : 'unknown';
  console.log(
    `  estimates beside all this: ${done} of ${total} lifts after ${sinceS.toFixed(0)} s; all of them: ${allS}`,
  );
}

async function whole(
  server: WatchedServer,
  some: LoggedSet,
  { name, does }: Whole,
  at: Parameters<Whole['does']>[0],
): Promise<void> {
  const seen = await server.watch(name);
  const logged = somebodyLogs(server.url, some);
  const from = performance.now();
  const outcome = await does(at).catch(String);
  const lastedS = (performance.now() - from) / 1000;
  const { stalls, mostBytes, cpuS } = await seen();
  const { mostMs, refused } = await logged();
  console.log(
    `  ${name}: ${lastedS.toFixed(1)} s, ${cpuS.toFixed(1)} s of processor with what else goes on (${outcome}); the thread that answers stood still ${stalls[2].toFixed(0)} ms at worst, a set waited ${mostMs.toFixed(0)} ms at most${refused > 0 ? `, ${refused} were refused` : ''}; at most ${mb(mostBytes)} of memory`,
  );
}
