import { Piscina } from 'piscina';
import { Refusal, type RefusalReason } from '#store/Refusal.ts';
import type { ImportAsked, Imported, ImportLog } from './importLog.ts';

/**
 * Takes files of sets in by a thread of its own with its own door to the club's file, so that every screen is answered
 * meanwhile. The whole file is one transaction there; who reads sees the log as it was until that is done.
 */
export function importThread(): { importLog: ImportLog; close: () => Promise<void> } {
  let thread: Piscina<Asked, Answer> | undefined;
  return {
    async importLog({ path }, asked) {
      thread ??= new Piscina({ filename, minThreads: 0, maxThreads: 1, idleTimeout: keepWarmMs });
      const answer = await thread.run({ path, asked });
      if ('imported' in answer) return answer.imported;
      const { reason, field, message } = answer.refused;
      throw new Refusal(reason, field, message);
    },
    async close() {
      await thread?.destroy();
    },
  };
}

interface Asked {
  path: string;
  asked: ImportAsked;
}
type Answer = { imported: Imported } | { refused: { reason: RefusalReason; field: string; message: string } };

const filename = new URL('./importWorker.mjs', import.meta.url).href;
/** A file is looked at, mended and sent again. */
const keepWarmMs = 60 * 1000;
