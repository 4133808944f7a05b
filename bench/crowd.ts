import { cp, mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { localToday } from '#cli/localToday.ts';
import { openOneClub } from '#server/oneClub.ts';
import { bigClub, CLUB } from './club/bigClub.ts';
import { bareInsert } from './crowd/bareInsert.ts';
import type { Told } from './crowd/people.ts';
import { people } from './crowd/peopleAside.ts';
import { quantile } from './crowd/quantiles.ts';
import type { ScreenName } from './crowd/screen.ts';
import { untilWeighed } from './crowd/untilWeighed.ts';
import { type Watched, type WatchedServer, watchedServer } from './crowd/watchedServer.ts';

const PEOPLE = 60;
const SECONDS = 20;
const SCREENS: readonly [ScreenName, number][] = [
  ['day', 24],
  ['lifter', 12],
  ['everybody', 12],
  ['log', 8],
  ['gear', 4],
];
const DAY = 'day-speed-squat';

/**
 * The real server under a crowd: sixty people log a set a second each, first alone and then with sixty screens open, which fetch what
 * changed. A logged set is told in durable inserts of the database library alone, at the same pace in the same run; beside it how long
 * the thread that answers stood still. `BENCH_KEPT` names a folder in which a club whose strengths are worked out is kept for the next run.
 */
export async function run(): Promise<void> {
  const today = localToday();
  const folder = await mkdtemp(join(tmpdir(), 'bench-'));
  const path = join(folder, 'club.sqlite');
  try {
    await makeClub(path, today);
    const bare = await bareInsert(folder, { aSecond: PEOPLE, seconds: SECONDS / 2 });
    const server = await watchedServer(path);
    console.log(
      `${CLUB.lifters} lifters, ${CLUB.sets} sets: the server answers after ${server.startS.toFixed(1)} s`,
    );
    try {
      await untilWeighed(server.url);
      await fetch(`${server.url}/api/days/${DAY}/solve`, { method: 'POST' });
      const alone = await logged(server, today, 0);
      const among = await logged(server, today, PEOPLE);
      bare.push(...(await bareInsert(folder, { aSecond: PEOPLE, seconds: SECONDS / 2 })));
      const [p50, p99] = [quantile(bare, 0.5), quantile(bare, 0.99)];
      console.log(`one durable insert alone: ${ms(p50)}, one of a hundred ${ms(p99)}`);
      for (const [screens, { told, watched }] of [
        ['no screen', alone],
        [`${PEOPLE} screens`, among],
      ] as const)
        print(screens, told, watched, p50);
      printAnswers(among.told);
    } finally {
      await server.close();
    }
    console.log(`on disk: ${((await bytesIn(folder)) / 1e6).toFixed(0)} MB`);
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** With what the server works out of it once, where it is kept. */
async function makeClub(path: string, today: string): Promise<void> {
  const kept = process.env.BENCH_KEPT;
  const there = kept === undefined ? null : await stat(join(kept, 'club.sqlite')).catch(() => null);
  if (there !== null) return cp(kept!, join(path, '..'), { recursive: true });
  const store = await openOneClub(path, { name: 'the bench' });
  const { records, sets } = bigClub(CLUB, today);
  const day = records.day.map((one) => (one.id === DAY ? { ...one, date: today } : one));
  await store.importRecords({ ...records, day }, { sets });
  await store.close();
  if (kept === undefined) return;
  const server = await watchedServer(path);
  await untilWeighed(server.url);
  await server.close();
  await cp(join(path, '..'), kept, { recursive: true });
}

/** What the people saw who log a set a second each, beside so many screens. */
async function logged(
  server: WatchedServer,
  today: string,
  screens: number,
): Promise<{ told: Told; watched: Watched }> {
  const { url } = server;
  const { records } = (await (await fetch(`${url}/api/club`)).json()) as {
    records: ReturnType<typeof bigClub>['records'];
  };
  const lifters = records.lifter.map(({ id }) => id);
  const setups = new Map(records.best.map((best) => [best.lifterId, best]));
  const ofDay = new Set(
    records.day
      .find(({ id }) => id === DAY)!
      .groups.flatMap(({ places }) => places.map(({ lifterId }) => lifterId)),
  );
  const clients = Array.from({ length: PEOPLE }, (_, i) => {
    const lifterId = lifters[i % lifters.length]!;
    const { lift, setup } = setups.get(lifterId)!;
    return {
      lifterId,
      lift,
      setup,
      doneOn: today,
      reps: 3,
      made: 3,
      dayId: ofDay.has(lifterId) ? DAY : null,
    };
  });
  const names = SCREENS.flatMap(([name, count]) => Array.from({ length: count }, () => name)).slice(
    0,
    screens,
  );
  const watching = await people({
    url,
    screens: names.map((name, i) => ({
      name,
      dayId: DAY,
      lifterId: lifters[i % lifters.length]!,
      today,
    })),
    clients: [],
    seconds: 0,
  });
  const logging = await people({ url, screens: [], clients, seconds: SECONDS });
  await pause(3000);
  const seen = await server.watch(`${screens} screens`);
  await Promise.all([watching.log(), logging.log()]);
  const watched = await seen();
  const { answers } = await watching.leave();
  return { told: { ...(await logging.leave()), answers }, watched };
}

function print(screens: string, { logged, refused }: Told, watched: Watched, bareMs: number): void {
  const [p50, p99, worst] = [0.5, 0.99, 1].map((share) => quantile(logged, share)) as [
    number,
    number,
    number,
  ];
  const times = (value: number) => `${ms(value)} = ${(value / bareMs).toFixed(1)}`;
  const { stalls, cpuS, answeringS, awaitedS, mostBytes } = watched;
  console.log(
    `${PEOPLE} people, ${screens}: ${logged.length} sets logged (${refused} refused), in the middle ${times(p50)} inserts, one of a hundred ${times(p99)} inserts, at worst ${ms(worst)}; ` +
      `the thread that answers stood still ${stalls.map(ms).join(', ')} (middle, one of a hundred, worst), worked ${answeringS.toFixed(1)} s and waited ${awaitedS.toFixed(1)} s for a processor; ${cpuS.toFixed(1)} s of processor in all, at most ${(mostBytes / 1e6).toFixed(0)} MB`,
  );
}

function printAnswers({ answers }: Told): void {
  console.log('what the screens were answered, ms in the middle and one of a hundred:');
  for (const [path, { ms: lasted, bytes, same }] of Object.entries(answers))
    console.log(
      `  ${path}: ${lasted.length} times, ${same} unchanged, ${quantile(lasted, 0.5).toFixed(0)} and ${quantile(lasted, 0.99).toFixed(0)}, ${(bytes / 1e6).toFixed(1)} MB`,
    );
}

function ms(value: number): string {
  return `${value < 10 ? value.toFixed(1) : value.toFixed(0)} ms`;
}

async function bytesIn(folder: string): Promise<number> {
  const names = await readdir(folder, { recursive: true });
  const sizes = await Promise.all(names.map(async (name) => stat(join(folder, name))));
  return sizes.reduce((sum, found) => sum + (found.isFile() ? found.size : 0), 0);
}
