import { copyFile, mkdir, mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { localToday } from '#cli/localToday.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { openOneClub } from '#server/oneClub.ts';
import { bigClub, type ClubSize } from './club/bigClub.ts';
import { type Answered, type Line, line } from './crowd/line.ts';
import { quantile } from './crowd/quantiles.ts';
import { type WatchedServer, watchedServer } from './crowd/watchedServer.ts';
import { mb } from './million/mb.ts';
import { addressesOf } from './million/screens.ts';
import { somebodyLogs } from './million/somebodyLogs.ts';
import { type Whole, wholes } from './million/wholes.ts';

const TIMES = 100;
/** An address that is slow is asked less often. */
const LONGEST_MS = 20_000;
const DAY = 'day-speed-squat';
/** So many sets the invented club's lifters have each, whatever the size. */
const SETS_OF_LIFTER = 2500;
/** All that the invented club's days name. */
const FEWEST = 20;
const SIZES = [100_000, 1_000_000];

/**
 * The same program on a club of ten times as many: how long its file takes to fill, to start and to give a first answer, what every
 * screen asks for, and whatever reads or writes the whole club, with how long the thread that answers stood still and a set that
 * somebody logged waited meanwhile. What must not grow with the log is the same in both. `--sets 200000` measures one size alone, `--only archive` of what reads or writes the whole
 * club what has that in its name. `BENCH_KEPT` names a folder in which filled clubs are kept for the next run.
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
  await fill(path, size, today);
  const { size: bytes } = await stat(path);
  console.log(`${size.lifters} lifters, ${size.sets} sets: ${mb(bytes)} on disk`);
  const server = await watchedServer(path);
  try {
    const from = performance.now();
    const asked = line(server.url, 6);
    const { body } = await asked.ask('/api/club');
    console.log(
      `  the server answers after ${server.startS.toFixed(1)} s, the whole club (${mb(body.length)}) ${(performance.now() - from).toFixed(0)} ms later`,
    );
    const club = JSON.parse(body.toString());
    const shown = addressesOf(club, DAY, today);
    const only = wordAfter('--only');
    if (only === undefined)
      for (const [screen, paths] of Object.entries(shown))
        for (const path of paths) await address(server, asked, screen, path);
    const { sets } = JSON.parse((await asked.ask('/api/sets')).body.toString());
    const at = { url: server.url, folder: dirname(path), asked, today, records: club.records };
    for (const work of wholes) if (work.name.includes(only ?? '')) await whole(server, sets[0], work, at);
    await estimates(asked, from);
    asked.close();
  } finally {
    await server.close();
  }
}

function wordAfter(option: string): string | undefined {
  const at = process.argv.indexOf(option);
  return at < 0 ? undefined : process.argv[at + 1];
}

async function fill(path: string, size: ClubSize, today: string): Promise<void> {
  const kept = process.env.BENCH_KEPT;
  const asKept = kept === undefined ? null : join(kept, `${size.sets}-${today}.sqlite`);
  if (asKept !== null && (await stat(asKept).catch(() => null))) return copyFile(asKept, path);
  const { records, sets } = bigClub(size, today);
  const day = records.day.map((one) => (one.id === DAY ? { ...one, date: today } : one));
  const from = performance.now();
  const cpu = process.cpuUsage();
  const store = await openOneClub(path, { name: 'the bench' });
  await store.importRecords({ ...records, day }, { sets });
  await store.close();
  const { user, system } = process.cpuUsage(cpu);
  console.log(
    `filled in ${((performance.now() - from) / 1000).toFixed(1)} s, ${((user + system) / 1e6).toFixed(1)} s of processor`,
  );
  if (asKept === null) return;
  await mkdir(kept!, { recursive: true });
  await copyFile(path, asKept);
}

/** An address of a screen, while the server works out everybody's strength behind. */
async function address(server: WatchedServer, asked: Line, screen: string, path: string): Promise<void> {
  const seen = await server.watch(`${screen} ${path}`);
  const answers: Answered[] = [];
  const from = performance.now();
  while (answers.length < TIMES && performance.now() - from < LONGEST_MS) answers.push(await asked.ask(path));
  const { answeringS, longestTurnMs, stalls } = await seen();
  const ms = answers.map((answer) => answer.ms);
  const { status, body } = answers[0]!;
  console.log(
    `  ${screen} ${path}: ${ms[0]!.toFixed(0)} ms at first, ${quantile(ms, 0.5).toFixed(1)} ms in the middle, ${quantile(ms, 0.99).toFixed(0)} ms one of a hundred, ${((1000 * answeringS) / answers.length).toFixed(1)} ms of the thread that answers, which stood still ${stalls[2].toFixed(0)} ms at worst and was at work for ${longestTurnMs.toFixed(0)} ms at most in one turn; ${mb(body.length)}${status < 300 ? '' : `, status ${status}`}`,
  );
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
  const lifterIds = at.records.lifter.map(({ id }) => id);
  const logged = somebodyLogs(server.url, some, lifterIds);
  const from = performance.now();
  const outcome = await does(at).catch(String);
  const lastedS = (performance.now() - from) / 1000;
  const { stalls, longestTurnMs, mostBytes, cpuS } = await seen();
  const { mostMs, refused } = await logged();
  console.log(
    `  ${name}: ${lastedS.toFixed(1)} s, ${cpuS.toFixed(1)} s of processor with what else goes on (${outcome}); the thread that answers stood still ${stalls[2].toFixed(0)} ms at worst and was at work for ${longestTurnMs.toFixed(0)} ms at most in one turn, a set waited ${mostMs.toFixed(0)} ms at most${refused > 0 ? `, ${refused} were refused` : ''}; at most ${mb(mostBytes)} of memory`,
  );
}
