import { newsTogether } from '#web/api/newsTogether.ts';
import { type Answered, type Line, line } from './line.ts';

/** One address that a screen shows an answer of, and when it asks again. */
interface Shown {
  path: string;
  /**
   * It tells of sets of the log alone: asked again where any was touched ('sums'), one of a day before today ('earlier'), or where the news
   * do not bring these with them ('sets').
   */
  ofLog?: 'sums' | 'earlier' | 'sets';
  /** An earlier question is let go when it is asked again; else the browser reads both answers. */
  letsGo?: boolean;
  /** Asked again after so long while an answer says that more will come. */
  again?: { ms: number; while: (body: string) => boolean };
}

/** The addresses of each of our screens, as `web/api` asks for them. `dayId` and `lifterId`: which one is looked at. */
export function shownBy(dayId: string, lifterId: string, today: string) {
  const day = `/api/days/${dayId}`;
  return {
    day: [
      { path: `${day}/retelling` },
      { path: `${day}/moved` },
      { path: `${day}/last-time`, ofLog: 'earlier' },
      { path: `/api/sets?dayId=${dayId}`, ofLog: 'sets' },
    ],
    lifter: [
      ...['squat', 'bench', 'deadlift'].map((lift) => ({
        path: `/api/estimates?lifterId=${lifterId}&lift=${lift}`,
        letsGo: true,
      })),
      { path: `/api/sets?lifterId=${lifterId}`, ofLog: 'sets' },
    ],
    everybody: [
      {
        path: '/api/estimates/all',
        again: { ms: 2000, while: (body: string) => body.includes('"running":true') },
      },
    ],
    log: [
      { path: '/api/sets/days', ofLog: 'sums' },
      { path: `/api/sets?from=${today}&to=${today}`, ofLog: 'sets' },
    ],
    gear: [
      { path: '/api/sets/band-reps', ofLog: 'sums' },
      { path: '/api/changes', letsGo: true },
    ],
  } satisfies Record<string, Shown[]>;
}

export type ScreenName = keyof ReturnType<typeof shownBy>;

/** A browser has six connections to one place. */
const CONNECTIONS = 6;

/**
 * A screen that is looked at: it listens to the news and asks for what changed as `web/api/useClubEvents.ts` and `fetchClub.ts` do,
 * then again for what it shows. `heard` gets each answer.
 */
export async function openScreen(
  url: string,
  shown: readonly Shown[],
  today: string,
  heard: (path: string, answer: Answered) => void,
) {
  const server = line(url, CONNECTIONS);
  const club = JSON.parse((await server.ask('/api/club')).body.toString()) as { seq: number; madeAt: string };
  const questions = shown.map((one) => question(server, one, heard));
  const isOfEstimates = ({ path }: Shown) => /estimates|moved|retelling/.test(path);
  const ask = (isAsked: (one: Shown) => boolean) => {
    for (const [i, again] of questions.entries()) if (isAsked(shown[i]!)) void again();
  };
  ask(() => true);
  const hear = newsTogether<string>(async (named) => {
    const isOfNews = (one: Shown) => named.has('estimates') && isOfEstimates(one);
    if (!named.has('change')) return ask(isOfNews);
    const path = `/api/club/changes?after=${club.seq}&madeAt=${club.madeAt}`;
    const answer = await server.ask(path);
    heard('/api/club/changes', answer);
    const news = JSON.parse(answer.body.toString());
    if (news.seq <= club.seq) return ask(isOfNews);
    Object.assign(club, { seq: news.seq, madeAt: news.madeAt });
    const touched: { doneOn: string }[] | null = 'records' in news ? null : news.sets;
    const isTold = ({ ofLog }: Shown) =>
      touched !== null &&
      (ofLog === 'sets' ||
        (ofLog === 'sums' && touched.length === 0) ||
        (ofLog === 'earlier' && touched.every(({ doneOn }) => doneOn >= today)));
    ask((one) => !isTold(one));
  });

  await server.listen((event) => {
    if (event === 'change' || event === 'estimates') hear(event);
  });
}

function question(
  server: Line,
  { path, letsGo, again }: Shown,
  heard: (path: string, answer: Answered) => void,
) {
  let mark: string | undefined;
  let before: AbortController | undefined;
  let timer: NodeJS.Timeout | undefined;
  return async function ask(): Promise<void> {
    if (letsGo) before?.abort();
    clearTimeout(timer);
    before = new AbortController();
    const answer = await server.ask(path, mark, letsGo ? before.signal : undefined).catch(() => null);
    if (answer === null) return;
    heard(path, answer);
    mark = answer.mark ?? mark;
    if (again?.while(answer.body.toString())) timer = setTimeout(ask, again.ms);
  };
}
