import { Piscina } from 'piscina';
import type { EvidenceReport } from '#contract/evidence/evidenceReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';

export type WeighEvidence = (records: ClubRecords, sets: LoggedSet[]) => Promise<EvidenceReport>;

/** Weighs the club's whole log in a thread of its own: years of it take longer than a screen may wait. */
export function evidenceWeigher(): { weighEvidence: WeighEvidence; close: () => Promise<void> } {
  let threads: Piscina<{ records: ClubRecords; sets: LoggedSet[] }, EvidenceReport> | undefined;
  return {
    weighEvidence(records, sets) {
      // Begun when first asked for, and gone a minute after: it is asked for seldom.
      threads ??= new Piscina({ filename, minThreads: 0, maxThreads: 1, idleTimeout: keepWarmMs });
      return threads.run({ records, sets });
    },
    async close() {
      await threads?.destroy();
    },
  };
}

const filename = new URL('./evidenceWorker.mjs', import.meta.url).href;
const keepWarmMs = 60 * 1000;
