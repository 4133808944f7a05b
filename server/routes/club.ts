import { Hono } from 'hono';
import { type SSEStreamingApi, streamSSE } from 'hono/streaming';
import { noQuery, numberInQuery, readQuery } from '#server/guard/readQuery.ts';
import type { StrengthEstimator } from '#server/strength/strengthEstimator.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** The whole club in one document, and the news of each change to it and of better estimates. */
export function clubRoutes(store: ClubStore, estimator: StrengthEstimator) {
  return new Hono()
    .get('/club', noQuery, async (c) => c.json(await store.records()))
    .get('/events', async (c) => {
      const asked = readQuery(c, { after: changeNumber.optional() });
      const seen = c.req.header('last-event-id') ?? '';
      const known = /^\d+$/.test(seen) ? Number(seen) : (asked.after ?? (await store.latestSeq()));
      return streamSSE(c, (stream) => tellNews(store, estimator, stream, known));
    });
}

const changeNumber = numberInQuery(
  'the number of a change, such as 12',
  (seq) => Number.isSafeInteger(seq) && seq >= 0,
);

/**
 * Tells the number of every change after `known`, those already made and those to come, and that estimates became better
 * though nothing was changed, until the reader leaves.
 */
async function tellNews(
  store: ClubStore,
  estimator: StrengthEstimator,
  stream: SSEStreamingApi,
  known: number,
): Promise<void> {
  let told = known;
  let wake: (() => void) | undefined;
  let estimatesAreBetter = false;
  const stopListening = store.onChange(() => wake?.());
  const stopWaiting = estimator.onNews(() => {
    estimatesAreBetter = true;
    wake?.();
  });
  // A command in the terminal may write to the same file; only a look at the log tells.
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
      for (const { seq } of await store.changesAfter(told)) {
        await stream.writeSSE({ event: 'change', id: String(seq), data: JSON.stringify({ seq }) });
        told = seq;
      }
      if (estimatesAreBetter) {
        estimatesAreBetter = false;
        // Without an id: it is no change from which to resume.
        await stream.writeSSE({ event: 'estimates', data: JSON.stringify({ seq: told }) });
      }
      if (!stream.aborted) await nextChange;
    }
  } finally {
    clearInterval(looking);
    stopListening();
    stopWaiting();
  }
}

const lookEveryMs = 2000;
