import { Hono } from 'hono';
import { kindNames } from '#contract/records/allKinds.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import { readingDoorOf } from '#server/jobs/clubDoor.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import { lastTouching } from '#server/jobs/lastTouching.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** Whether racks and bands do for what the seasons of the club ask, from today on. Worked out once for each state of the records, whoever asks. */
export function gearAheadRoutes(store: ClubStore, run: RunWork) {
  const stateOfRecords = lastTouching(store, askedFor);
  const checks = keptWork({
    most: 1,
    width: 1,
    keyOf: () => 'club',
    async restsOn(_of: null) {
      const today = await store.today();
      return { basis: [await stateOfRecords(), today], today };
    },
    endsWhenLeft: true,
    work: async (_of, { today }, how) => run('checkGearAhead', { door: readingDoorOf(store), today }, how),
  });
  return new Hono().get('/seasons/gear', noQuery, async (c) =>
    markedJson(c, { warnings: await checks.ask(null, { signal: c.req.raw.signal }) }),
  );
}

/** Days and kept works change all the time, and nothing of them is asked here. */
const askedFor = kindNames.filter((kind) => kind !== 'day' && kind !== 'workTemplate');
