import { Hono } from 'hono';
import { evidenceForLifter } from '#contract/evidence/evidenceForLifter.ts';
import type { EvidenceReport } from '#contract/evidence/evidenceReport.ts';
import { clubWithFormerGear } from '#server/jobs/clubWithFormerGear.ts';
import type { WeighEvidence } from '#server/jobs/evidenceWeigher.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

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
    const lifterId = c.req.query('lifterId');
    const { records, seq } = await store.records();
    if (lifterId !== undefined && !records.lifter.some(({ id }) => id === lifterId))
      throw new Refusal('missing', 'lifterId', `The club has no lifter with the id "${lifterId}".`);
    const report = await reportAt(seq);
    return c.json(lifterId === undefined ? report : evidenceForLifter(report, lifterId));
  });
}

async function weigh(store: ClubStore, weighEvidence: WeighEvidence): Promise<EvidenceReport> {
  const { records, log } = await clubWithFormerGear(store);
  return weighEvidence(records, log);
}
