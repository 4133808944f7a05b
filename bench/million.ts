import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { localToday } from '#cli/localToday.ts';
import { openOneClub } from '#server/oneClub.ts';
import { bigClub } from './club/bigClub.ts';
import { type Line, line } from './crowd/line.ts';
import { quantile } from './crowd/quantiles.ts';
import { shownBy } from './crowd/screen.ts';
import { type WatchedServer, watchedServer } from './crowd/watchedServer.ts';

const TIMES = 15;
const DAY = 'day-speed-squat';
const SIZES = [
  { lifters: 40, sets: 100_000 },
  { lifters: 400, sets: 1_000_000 },
];

/**
 * The same program on a club of ten times as many: how long its file takes to fill, to start and to give a first answer, what every
 * screen asks for, and whatever reads the whole club, with how long the thread that answers stood still meanwhile. What must not grow
 * with the log is the same in both columns.
 */
export async function run(): Promise<void> {
  for (const size of SIZES) {
    const folder = await mkdtemp(join(tmpdir(), 'bench-'));
    try {
      await measure(join(folder, 'club.sqlite'), size);
    } finally {
      await rm(folder, { recursive: true });
    }
  }
}

async function measure(path: string, size: (typeof SIZES)[number]): Promise<void> {
  const today = localToday();
  const filledS = await fill(path, size, today);
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
    for (const work of wholes) await whole(server, asked, work);
    asked.close();
  } finally {
    await server.close();
  }
}

async function fill(path: string, size: (typeof SIZES)[number], today: string): Promise<number> {
  const { records, sets } = bigClub(size, today);
  const day = records.day.map((one) => (one.id === DAY ? { ...one, date: today } : one));
  const from = performance.now();
  const store = await openOneClub(path, { name: 'the bench' });
  await store.importRecords({ ...records, day }, { sets });
  await store.close();
  return (performance.now() - from) / 1000;
}

/** Each address of each screen, while the server works out everybody's strength behind. */
async function screens(asked: Line, today: string): Promise<void> {
  const { records } = JSON.parse((await asked.ask('/api/club')).body.toString());
  const shown = Object.values(shownBy(DAY, records.lifter[0].id, today)).flat();
  for (const path of [...new Set(shown.map((one) => one.path)), '/api/sets/days?words=knee', '/api/sets']) {
    // Estimates of the first minutes are waited for, and are measured elsewhere.
    if (/estimates\?/.test(path)) continue;
    const answers = [];
    for (let i = 0; i < TIMES; i += 1) answers.push(await asked.ask(path));
    const ms = answers.map((answer) => answer.ms);
    console.log(
      `  ${path}: ${quantile(ms, 0.5).toFixed(1)} ms, at worst ${Math.max(...ms).toFixed(0)} ms, ${mb(answers[0]!.body.length)}`,
    );
  }
}

/** What reads or writes the whole club, by name. */
const wholes: { name: string; does: (asked: Line) => Promise<{ status: number; body: Buffer }> }[] = [
  { name: 'loads of a day', does: (asked) => asked.send(`/api/days/${DAY}/solve`, {}) },
  { name: 'a snapshot', does: (asked) => asked.send('/api/copies', {}) },
  { name: 'the log as a table', does: (asked) => asked.ask('/api/sets/csv') },
  { name: 'the archive', does: (asked) => asked.ask('/api/archive') },
  {
    name: 'the archive looked at',
    does: async (asked) =>
      asked.send('/api/archive?dryRun=1', JSON.parse((await asked.ask('/api/archive')).body.toString())),
  },
  { name: 'evidence', does: (asked) => asked.ask('/api/evidence') },
];

async function whole(
  server: WatchedServer,
  asked: Line,
  { name, does }: (typeof wholes)[number],
): Promise<void> {
  const seen = await server.watch(name);
  const from = performance.now();
  const outcome = await does(asked).then(
    ({ status, body }) => `${status}, ${mb(body.length)}`,
    (error: unknown) => String(error),
  );
  const lastedS = (performance.now() - from) / 1000;
  const { stalls, mostBytes } = await seen();
  console.log(
    `  ${name}: ${lastedS.toFixed(1)} s (${outcome}), the thread that answers stood still ${stalls[2].toFixed(0)} ms at worst, at most ${mb(mostBytes)} of memory`,
  );
}

function mb(bytes: number): string {
  return `${(bytes / 1e6).toFixed(bytes < 1e6 ? 2 : 0)} MB`;
}
