import { Hono } from 'hono';
import { z } from 'zod';
import { evidenceForLifter } from '#reckon/evidence/evidenceForLifter.ts';
import { readQuery } from '#server/guard/readQuery.ts';
import { recordNamed } from '#server/guard/recordNamed.ts';
import { clubWithFormerGear } from '#server/jobs/clubWithFormerGear.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import type { WorkNews } from '#server/jobs/workNews.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** What the log says of the club's rules of thumb. Weighed once for each state of the club, whoever asks. */
export function evidenceRoutes(store: ClubStore, run: RunWork, keepIn: KeptAnswers, news: WorkNews) {
  const reports = keptWork({
    most: 1,
    width: 1,
    keyOf: () => 'club',
    async restsOn(_club: null) {
      const { seq, madeAt } = await store.standing();
      return { basis: [seq, madeAt] };
    },
    endsWhenLeft: true,
    keepIn: keepIn.of('evidence', 1),
    onTold: (_club, told) => news.tell({ work: 'evidence', of: '', ...told }),
    work: async (_club, _now, how) => run('weighEvidence', await clubWithFormerGear(store), how),
  });
  return new Hono().get('/evidence', async (c) => {
    const { lifterId } = readQuery(c, { lifterId: z.string().optional() });
    if (lifterId !== undefined) await recordNamed(store, 'lifter', 'lifterId', lifterId);
    const report = await reports.ask(null, { signal: c.req.raw.signal });
    return c.json(lifterId === undefined ? report : evidenceForLifter(report, lifterId));
  });
}
