import type { LogFileAnswer } from '#contract/log/logFileAnswer.ts';
import { Refusal, type RefusalReason } from '#store/Refusal.ts';
import type { ImportLog } from './importLog.ts';
import { lazyThreads } from './lazyThreads.ts';

/**
 * Takes files of sets in by a thread of its own with its own door to the club's file, so that every screen is answered
 * meanwhile. The whole file is one transaction there; who reads sees the log as it was until that is done.
 */
export function importThread(): { importLog: ImportLog; close: () => Promise<void> } {
  const thread = lazyThreads(worker, keepWarmMs);
  return {
    async importLog({ path, clubId, who }, asked) {
      const answer = await thread.run<Answer>({ path, clubId, who, asked });
      if ('imported' in answer) return answer.imported;
      const { reason, field, message } = answer.refused;
      throw new Refusal(reason, field, message);
    },
    close: thread.close,
  };
}

type Answer =
  | { imported: LogFileAnswer }
  | { refused: { reason: RefusalReason; field: string; message: string } };

const worker = new URL('./importWorker.mjs', import.meta.url);
/** A file is looked at, mended and sent again. */
const keepWarmMs = 60 * 1000;
