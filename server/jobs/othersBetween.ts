import { setImmediate as othersFirst } from 'node:timers/promises';

/**
 * Begins one work after the other and answers others between two: of hundreds begun with in one go everybody would wait for all. What came of
 * each, in their order, once all are done; fails with the first that fails.
 */
export function othersBetween<Of, Done>(
  all: readonly Of[],
  work: (of: Of) => Promise<Done>,
): Promise<Done[]> {
  let turn: Promise<void> = Promise.resolve();
  return Promise.all(
    all.map(async (of) => {
      turn = turn.then(() => othersFirst());
      await turn;
      return work(of);
    }),
  );
}
