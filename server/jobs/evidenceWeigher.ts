import type { EvidenceReport } from '#contract/evidence/evidenceReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { lazyThreads } from './lazyThreads.ts';

export type WeighEvidence = (records: ClubRecords, sets: LoggedSet[]) => Promise<EvidenceReport>;

/** Weighs the club's whole log in a thread of its own: years of it take longer than a screen may wait. */
export function evidenceWeigher(): { weighEvidence: WeighEvidence; close: () => Promise<void> } {
  const thread = lazyThreads(worker, keepWarmMs);
  return {
    weighEvidence: (records, sets) => thread.run({ records, sets }),
    close: thread.close,
  };
}

const worker = new URL('./evidenceWorker.mjs', import.meta.url);
/** It is asked for seldom. */
const keepWarmMs = 60 * 1000;
