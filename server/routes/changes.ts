import { Hono } from 'hono';
import { z } from 'zod';
import { markedJson } from '#server/guard/markedJson.ts';
import { numberInQuery, readQuery } from '#server/guard/readQuery.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** What was done, a page at a time, and what is taken back or done again next. */
export function changeRoutes(store: ClubStore) {
  return new Hono().get('/changes', async (c) => {
    const { before, most } = readQuery(c, query);
    return markedJson(c, await store.whatWasDone({ before: before ?? null, most }));
  });
}

const changeNumber = numberInQuery(
  'the number of a change, such as 12',
  (seq) => Number.isSafeInteger(seq) && seq >= 1,
);
const mostOnPage = 200;
const pageLength = numberInQuery(
  `a whole number from 1 to ${mostOnPage}`,
  (most) => Number.isInteger(most) && most >= 1 && most <= mostOnPage,
);

const query = z.object({ before: changeNumber.optional(), most: pageLength.default(50) });
