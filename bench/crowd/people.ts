import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Answered } from './line.ts';
import { line } from './line.ts';
import { openScreen, type ScreenName, shownBy } from './screen.ts';

/** What a process of people is to do, and what it tells at the end. */
export interface Asked {
  url: string;
  screens: readonly { name: ScreenName; dayId: string; lifterId: string; today: string }[];
  /** Each logs its set once a second. */
  clients: readonly Partial<LoggedSet>[];
  seconds: number;
}

export interface Told {
  /** ms of each set that was acknowledged. */
  logged: number[];
  refused: number;
  /** ms and bytes of each answer to a screen, by its address without the query. */
  answers: Record<string, { ms: number[]; bytes: number; same: number }>;
}

/** Opens screens, says so when each shows the club, logs until the time is up and says so; told to end it tells what it saw. */
process.once('message', async ({ url, screens, clients, seconds }: Asked) => {
  const told: Told = { logged: [], refused: 0, answers: {} };
  const heard = (path: string, { status, body, ms }: Answered) => {
    const kind = path.replace(/\?.*/, '').replace(/(days)\/[^/]+/, '$1/…');
    told.answers[kind] ??= { ms: [], bytes: 0, same: 0 };
    told.answers[kind].ms.push(ms);
    told.answers[kind].bytes += body.length;
    if (status === 304) told.answers[kind].same += 1;
  };
  for (const { name, dayId, lifterId, today } of screens)
    await openScreen(url, shownBy(dayId, lifterId, today)[name], today, heard);
  process.send!('ready');
  process.once('message', async () => {
    told.answers = {};
    const logAll = clients.map((set, i) => logEachSecond(url, set, i / clients.length, seconds));
    for (const { logged, refused } of await Promise.all(logAll)) {
      told.logged.push(...logged);
      told.refused += refused;
    }
    process.send!('done');
    process.once('message', () => process.send!(told, () => process.exit()));
  });
});

async function logEachSecond(url: string, set: Partial<LoggedSet>, phase: number, seconds: number) {
  const server = line(url, 1);
  const begun = performance.now();
  const logged: number[] = [];
  let refused = 0;
  for (let second = 0; second < seconds; second += 1) {
    const due = begun + 1000 * (second + phase);
    await new Promise((resolve) => setTimeout(resolve, due - performance.now()));
    const { status, ms } = await server.send('/api/sets', { sets: [set] });
    if (status === 201) logged.push(ms);
    else refused += 1;
  }
  server.close();
  return { logged, refused };
}
