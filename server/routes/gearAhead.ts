import { Hono } from 'hono';
import { fingerprint } from '#reckon/basis/fingerprint.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import { oncePerState } from '#server/jobs/oncePerState.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** Whether racks and bands do for what the seasons of the club ask, from today on. Worked out once for each state of the records, whoever asks. */
export function gearAheadRoutes(store: ClubStore, run: RunWork) {
  // Days and kept works change all the time, and nothing of them is asked here.
  const markOfRecords = oncePerState(({ day: _day, workTemplate: _works, ...asked }) => fingerprint(asked));
  const checks = keptWork({
    most: 1,
    width: 1,
    keyOf: () => 'club',
    async restsOn(_of: null) {
      const [{ records }, today] = await Promise.all([store.records(), store.today()]);
      return { basis: [markOfRecords(records), today], records, today };
    },
    endsWhenLeft: true,
    work: async (_of, { records, today }, how) => run('checkGearAhead', { records, today }, how),
  });
  return new Hono().get('/seasons/gear', noQuery, async (c) =>
    markedJson(c, { warnings: await checks.ask(null, { signal: c.req.raw.signal }) }),
  );
}
