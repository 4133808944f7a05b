import type { BacktestReport } from '#contract/projection/backtestReport.ts';
import type { EstimateProgress } from '#contract/strength/strengthSummary.ts';
import { readingDoorOf } from '#server/jobs/clubDoor.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** What is known of the backtest by now. */
interface BacktestState {
  /** The newest that is done; null before the first. */
  report: BacktestReport | null;
  /** When that was worked out. */
  workedOutAt: string | null;
  /** False while something it rests on has changed since. */
  upToDate: boolean;
  progress: EstimateProgress;
}

/** Foretells all past meets behind the screens, once for each state of what that rests on: gives what there is now, and begins a run where that is out of date. */
export function backtester(
  store: ClubStore,
  run: RunWork,
  keepIn: KeptAnswers,
): () => Promise<BacktestState> {
  let failed: { mark: string; error: unknown } | undefined;
  const markNow = newestMark(store);
  const backtests = keptWork({
    most: 1,
    width: 1,
    keepIn: keepIn.of('backtests', 1),
    keyOf: () => 'club',
    restsOn: async (_club: null) => ({ basis: [await markNow()] as const }),
    async work(_club, { basis: [mark] }, { tell }) {
      try {
        const report = await run('backtest', { door: readingDoorOf(store) }, { tell });
        return { report, workedOutAt: new Date().toISOString() };
      } catch (error) {
        failed = { mark, error };
        throw error;
      }
    },
  });
  return async () => {
    const now = await backtests.stand(null);
    // What failed once is told, and not tried again before something changes.
    if (failed?.mark === now.basis[0]) throw failed.error;
    const upToDate = backtests.given(null, now) !== undefined;
    if (!upToDate) backtests.ask(null).catch(() => {});
    const newest = backtests.newest(null);
    return {
      report: newest?.report ?? null,
      workedOutAt: newest?.workedOutAt ?? null,
      upToDate,
      progress: { ...backtests.progress(null), running: !upToDate },
    };
  };
}

/** What tells one state of all that a backtest rests on from another. Days that are planned change nothing of what was lifted. */
function newestMark(store: ClubStore): () => Promise<string> {
  let newest: { seq: number; mark: string } | undefined;
  return async () => {
    const seq = await store.latestSeq();
    if (newest?.seq !== seq) {
      const last = await store.lastChange(
        ({ replaced, sets, entries }) =>
          replaced || sets !== null || entries.some(({ kind }) => kind !== 'day'),
      );
      newest = { seq, mark: `${last.seq} ${last.madeAt}` };
    }
    return newest.mark;
  };
}
