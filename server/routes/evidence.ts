import { Hono } from 'hono';
import { z } from 'zod';
import { evidenceForLifter } from '#reckon/evidence/evidenceForLifter.ts';
import { readQuery } from '#server/guard/readQuery.ts';
import { recordNamed } from '#server/guard/recordNamed.ts';
import { clubWithFormerGear } from '#server/jobs/clubWithFormerGear.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** What the log says of the club's rules of thumb. Weighed once for each state of the club, whoever asks. */
export function evidenceRoutes(store: ClubStore, run: RunWork) {
  const reports = keptWork({
    most: 1,
    width: 1,
    keyOf: () => 'club',
    restsOn: async (_club: null) => ({ basis: [await store.latestSeq()] }),
    endsWhenLeft: true,
    work: async (_club, _now, { signal }) =>
      run('weighEvidence', await clubWithFormerGear(store), { signal }),
  });
  return new Hono().get('/evidence', async (c) => {
    const { lifterId } = readQuery(c, { lifterId: z.string().optional() });
    if (lifterId !== undefined) await recordNamed(store, 'lifter', 'lifterId', lifterId);
    const report = await reports.ask(null, { signal: c.req.raw.signal });
    return c.json(lifterId === undefined ? report : evidenceForLifter(report, lifterId));
  });
}
