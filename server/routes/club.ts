import { Hono } from 'hono';
import { streamSSE } from 'hono/streaming';
import { z } from 'zod';
import { markedJson } from '#server/guard/markedJson.ts';
import { noQuery, numberInQuery, readQuery } from '#server/guard/readQuery.ts';
import type { WorkNews } from '#server/jobs/workNews.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { newsLine, type OnNews } from './newsLine.ts';

/** The whole club in one document or what was done since a change, and the news: of each change to it, by the names of their events of better answers, and how far long work is. */
export function clubRoutes(store: ClubStore, news: Record<string, OnNews>, work: WorkNews) {
  const join = newsLine(store, news, work);
  return new Hono()
    .get('/club', noQuery, async (c) => markedJson(c, await store.records()))
    .get('/club/changes', async (c) => {
      const { after, madeAt } = readQuery(c, change);
      return c.json(await store.since({ seq: after, madeAt }));
    })
    .get('/events', async (c) => {
      const asked = readQuery(c, changeHeard);
      const seen = c.req.header('last-event-id') ?? '';
      const known = /^\d+$/.test(seen) ? Number(seen) : (asked.after ?? (await store.latestSeq()));
      return streamSSE(c, (stream) => join(stream, known));
    });
}

const changeNumber = numberInQuery(
  'the number of a change, such as 12',
  (seq) => Number.isSafeInteger(seq) && seq >= 0,
);

const change = z.object({ after: changeNumber, madeAt: z.iso.datetime() });
const changeHeard = z.object({ after: changeNumber.optional() });
