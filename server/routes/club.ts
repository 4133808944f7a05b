import { Hono } from 'hono';
import { type SSEStreamingApi, streamSSE } from 'hono/streaming';
import { z } from 'zod';
import type { WorkTold } from '#contract/words/doing.ts';
import { noQuery, numberInQuery, readQuery } from '#server/guard/readQuery.ts';
import type { WorkNews } from '#server/jobs/workNews.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** Calls back when what was worked out became better though the club was not changed, until the returned function is called. */
type OnNews = (listener: () => void) => () => void;

/** The whole club in one document or what was done since a change, and the news: of each change to it, by the names of their events of better answers, and how far long work is. */
export function clubRoutes(store: ClubStore, news: Record<string, OnNews>, work: WorkNews) {
  return new Hono()
    .get('/club', noQuery, async (c) => c.json(await store.records()))
    .get('/club/changes', async (c) => {
      const { after, madeAt } = readQuery(c, { after: changeNumber, madeAt: z.iso.datetime() });
      return c.json(await store.since({ seq: after, madeAt }));
    })
    .get('/events', async (c) => {
      const asked = readQuery(c, { after: changeNumber.optional() });
      const seen = c.req.header('last-event-id') ?? '';
      const known = /^\d+$/.test(seen) ? Number(seen) : (asked.after ?? (await store.latestSeq()));
      return streamSSE(c, (stream) => tellNews(store, news, work, stream, known));
    });
}

const changeNumber = numberInQuery(
  'the number of a change, such as 12',
  (seq) => Number.isSafeInteger(seq) && seq >= 0,
);

/**
 * Tells the number of every change after `known`, those already made and those to come, whether anything can be saved, and what
 * became better though nothing was changed, and how far long work is, until the reader leaves.
 */
async function tellNews(
  store: ClubStore,
  news: Record<string, OnNews>,
  work: WorkNews,
  stream: SSEStreamingApi,
  known: number,
): Promise<void> {
  let told = known;
  let toldTrouble: string | null | undefined;
  let wake: (() => void) | undefined;
  const better = new Set<string>();
  // Only the newest of each work: a reader behind a slow line hears no more than he can.
  const underWay = new Map<string, WorkTold>();
  const stopListening = store.onChange(() => wake?.());
  const stopWaiting = Object.entries(news).map(([event, onNews]) =>
    onNews(() => {
      better.add(event);
      wake?.();
    }),
  );
  stopWaiting.push(
    work.onTold((told) => {
      underWay.set(`${told.work} ${told.of}`, told);
      wake?.();
    }),
  );
  // A command in the terminal may write to the same file, and somebody may take the file away; only a look tells.
  const looking = setInterval(() => wake?.(), lookEveryMs);
  stream.onAbort(() => wake?.());
  try {
    // With this the browser knows from where to resume, even if the line breaks before the first change.
    await stream.writeSSE({ event: 'now', id: String(told), data: JSON.stringify({ seq: told }) });
    while (!stream.aborted) {
      // Made before the log is read, so that no change falls between reading and sleeping.
      const nextChange = new Promise<void>((resolve) => {
        wake = resolve;
      });
      const trouble = store.trouble();
      if (trouble !== toldTrouble)
        await stream.writeSSE({ event: 'trouble', data: JSON.stringify({ trouble }) });
      toldTrouble = trouble;
      for (const { seq } of await store.changesAfter(told)) {
        await stream.writeSSE({ event: 'change', id: String(seq), data: JSON.stringify({ seq }) });
        told = seq;
      }
      for (const event of better) {
        better.delete(event);
        // Without an id: it is no change from which to resume.
        await stream.writeSSE({ event, data: JSON.stringify({ seq: told }) });
      }
      for (const [key, told] of underWay) {
        underWay.delete(key);
        await stream.writeSSE({ event: 'work', data: JSON.stringify(told) });
      }
      if (!stream.aborted) await nextChange;
    }
  } finally {
    clearInterval(looking);
    stopListening();
    for (const stop of stopWaiting) stop();
  }
}

const lookEveryMs = 2000;
