import { Hono } from 'hono';
import { z } from 'zod';
import type { EvidenceReport } from '#contract/evidence/evidenceReport.ts';
import { evidenceForLifter } from '#reckon/evidence/evidenceForLifter.ts';
import { readQuery } from '#server/guard/readQuery.ts';
import { recordNamed } from '#server/guard/recordNamed.ts';
import { clubWithFormerGear } from '#server/jobs/clubWithFormerGear.ts';
import type { WeighEvidence } from '#server/jobs/evidenceWeigher.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** What the log says of the club's rules of thumb. Weighed once for each state of the club, whoever asks. */
export function evidenceRoutes(store: ClubStore, weighEvidence: WeighEvidence) {
  let newest: { seq: number; report: Promise<EvidenceReport> } | undefined;
  const reportAt = async (seq: number) => {
    if (newest?.seq === seq) return newest.report;
    const report = weigh(store, weighEvidence);
    newest = { seq, report };
    // A fault is told to whoever asked, and the next one asks anew.
    report.catch(() => {
      if (newest?.report === report) newest = undefined;
    });
    return report;
  };
  return new Hono().get('/evidence', async (c) => {
    const { lifterId } = readQuery(c, { lifterId: z.string().optional() });
    if (lifterId !== undefined) await recordNamed(store, 'lifter', 'lifterId', lifterId);
    const report = await reportAt(await store.latestSeq());
    return c.json(lifterId === undefined ? report : evidenceForLifter(report, lifterId));
  });
}

async function weigh(store: ClubStore, weighEvidence: WeighEvidence): Promise<EvidenceReport> {
  const { records, log } = await clubWithFormerGear(store);
  return weighEvidence(records, log);
}
