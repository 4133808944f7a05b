import { Hono } from 'hono';
import { z } from 'zod';
import { evidenceForLifter } from '#reckon/evidence/evidenceForLifter.ts';
import { hasLabel } from '#reckon/evidence/ofLabel.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { readQuery } from '#server/guard/readQuery.ts';
import { recordNamed } from '#server/guard/recordNamed.ts';
import { readingDoorOf } from '#server/jobs/clubDoor.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import type { WorkNews } from '#server/jobs/workNews.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/**
 * What the log says of the club's rules of thumb, of everybody or of those with a label alone. Weighed once for each state of the club,
 * whoever asks.
 */
export function evidenceRoutes(store: ClubStore, run: RunWork, keepIn: KeptAnswers, news: WorkNews) {
  const reports = keptWork({
    most: mostKept,
    width: 1,
    keyOf: (label: string | null) => (label === null ? 'club' : `label ${label.toLowerCase()}`),
    async restsOn(_label) {
      const { seq, madeAt } = await store.standing();
      return { basis: [seq, madeAt] };
    },
    endsWhenLeft: true,
    keepIn: keepIn.of('evidence', mostKept),
    onTold: (_label, told) => news.tell({ work: 'evidence', of: '', ...told }),
    work: async (label, _now, how) => run('weighEvidence', { door: readingDoorOf(store), label }, how),
  });
  return new Hono().get('/evidence', async (c) => {
    const { lifterId, label } = readQuery(c, query);
    if (lifterId !== undefined) await recordNamed(store, 'lifter', 'lifterId', lifterId);
    if (label !== undefined && lifterId !== undefined)
      throw new Refusal('invalid', 'label', `label is "${label}"; beside lifterId it must be left out.`);
    if (label !== undefined && !(await store.list('lifter')).some((lifter) => hasLabel(lifter, label)))
      throw new Refusal('missing', 'label', `The club has no lifter with the label "${label}".`);
    const report = await reports.ask(label ?? null, { signal: c.req.raw.signal });
    return markedJson(c, lifterId === undefined ? report : evidenceForLifter(report, lifterId));
  });
}

/** The club, and as many labels as an evening asks for. */
const mostKept = 4;

const query = z.object({ lifterId: z.string().optional(), label: z.string().optional() });
