import type { SSEStreamingApi } from 'hono/streaming';
import type { WorkTold } from '#contract/words/doing.ts';
import type { WorkNews } from '#server/jobs/workNews.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** Calls back when what was worked out became better though the club was not changed, until the returned function is called. */
export type OnNews = (listener: () => void) => () => void;

/** What one reader has been told. */
interface Reader {
  stream: SSEStreamingApi;
  seq: number;
  trouble: string | null | undefined;
  /** What became better since they were told. */
  better: Set<string>;
  /** How far long work is, the newest of each: nobody behind a slow line hears more than they can. */
  underWay: Map<string, WorkTold>;
  /** The line takes nothing more yet. */
  isBusy: boolean;
}

/**
 * Tells all who listen the number of the club's last change, whether anything can be saved, by their names what became better
 * though nothing was changed, and how far long work is. One reader is told at a time, who waited longest first: each then asks for what is new, and a crowd that
 * asked all at once would keep whoever logs a set waiting. What happens meanwhile is told in one.
 */
export function newsLine(store: ClubStore, news: Record<string, OnNews>, work: WorkNews) {
  /** In the order in which they were told last. */
  const readers = new Set<Reader>();
  let last = 0;
  let turn: NodeJS.Timeout | undefined;
  let stopListening: (() => void) | undefined;

  const isDue = (reader: Reader) =>
    !reader.isBusy &&
    (reader.seq < last ||
      reader.trouble !== store.trouble() ||
      reader.better.size > 0 ||
      reader.underWay.size > 0);

  async function tell(reader: Reader): Promise<void> {
    const { stream, better, underWay } = reader;
    const [seq, trouble, names] = [last, store.trouble(), [...better]];
    const isNewChange = seq > reader.seq;
    const isNewTrouble = trouble !== reader.trouble;
    Object.assign(reader, { seq, trouble, isBusy: true, better: new Set(), underWay: new Map() });
    const lines = [
      ...(isNewTrouble ? [spelt({ event: 'trouble', data: { trouble } })] : []),
      ...(isNewChange ? [spelt({ event: 'change', id: seq, data: { seq } })] : []),
      // Without an id: it is no change from which to resume.
      ...names.map((event) => spelt({ event, data: { seq } })),
      ...[...underWay.values()].map((data) => spelt({ event: 'work', data })),
    ];
    await stream.write(lines.join(''));
    reader.isBusy = false;
    takeTurns();
  }

  function takeTurns(): void {
    if (turn !== undefined) return;
    const next = [...readers].find(isDue);
    if (next === undefined) return;
    readers.delete(next);
    readers.add(next);
    tell(next).catch(() => readers.delete(next));
    turn = setTimeout(() => {
      turn = undefined;
      takeTurns();
    }, turnMs);
  }

  function hear(seq: number): void {
    last = Math.max(last, seq);
    takeTurns();
  }

  function listen(): () => void {
    const stops = Object.entries(news).map(([event, onNews]) =>
      onNews(() => {
        for (const { better } of readers) better.add(event);
        takeTurns();
      }),
    );
    stops.push(store.onChange(hear));
    stops.push(
      work.onTold((told) => {
        for (const { underWay } of readers) underWay.set(`${told.work} ${told.of}`, told);
        takeTurns();
      }),
    );
    // A command in the terminal may write to the same file, and somebody may take the file away; only a look tells.
    const looking = setInterval(() => void store.latestSeq().then(hear, takeTurns), lookEveryMs);
    return () => {
      clearInterval(looking);
      clearTimeout(turn);
      turn = undefined;
      for (const stop of stops) stop();
    };
  }

  /** Tells a reader all after the change that they know, until they leave. */
  return async function join(stream: SSEStreamingApi, known: number): Promise<void> {
    const left = new Promise<void>((resolve) => stream.onAbort(resolve));
    // With this the browser knows from where to resume, even if the line breaks before the first change.
    await stream.write(spelt({ event: 'now', id: known, data: { seq: known } }));
    const reader: Reader = {
      stream,
      seq: known,
      trouble: undefined,
      better: new Set(),
      underWay: new Map(),
      isBusy: false,
    };
    if (readers.size === 0) stopListening = listen();
    readers.add(reader);
    last = Math.max(last, await store.latestSeq());
    takeTurns();
    if (!stream.aborted) await left;
    readers.delete(reader);
    if (readers.size === 0) stopListening?.();
  };
}

/** One piece of news as an event stream has it (WHATWG HTML, 9.2.6). */
function spelt({ event, id, data }: { event: string; id?: number; data: object }): string {
  return `event: ${event}\ndata: ${JSON.stringify(data)}\n${id === undefined ? '' : `id: ${id}\n`}\n`;
}

/** Sixty screens are told in three seconds; one or two at once. */
const turnMs = 50;
const lookEveryMs = 2000;
