import type { BacktestReport } from '#contract/projection/backtestReport.ts';
import type { EstimateProgress } from '#contract/strength/strengthSummary.ts';
import { fingerprint } from '#reckon/basis/fingerprint.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { clubWithFormerGear } from './clubWithFormerGear.ts';
import type { EstimateLift } from './estimateThreads.ts';
import { runBacktest } from './runBacktest.ts';

/** What is known of the backtest by now. */
export interface BacktestState {
  /** The newest that is done; null before the first. */
  report: BacktestReport | null;
  /** When that was worked out. */
  workedOutAt: string | null;
  /** False while something it rests on has changed since. */
  upToDate: boolean;
  progress: EstimateProgress;
}

/** Foretells all past meets behind the screens, once for each state of what that rests on. */
export interface Backtester {
  /** What there is now; begins a run where that is out of date. */
  state(): Promise<BacktestState>;
  /** Waits for the run to end. */
  report(onProgress?: (done: number, total: number) => void): Promise<BacktestReport>;
  /** Begins nothing more; what is under way fails in silence. */
  stop(): void;
}

export function backtester(store: ClubStore, estimateLift: EstimateLift): Backtester {
  let newest: { mark: string; report: BacktestReport; workedOutAt: string } | undefined;
  let running: Promise<BacktestReport> | undefined;
  let failed: { mark: string; error: unknown } | undefined;
  let progress = { done: 0, total: 0 };
  let stopped = false;
  let marked: { seq: number; mark: string } | undefined;

  async function markNow(): Promise<string> {
    const seq = await store.latestSeq();
    if (marked?.seq !== seq) marked = { seq, mark: await markOf(store) };
    return marked.mark;
  }

  async function run(mark: string, onProgress: (done: number, total: number) => void) {
    progress = { done: 0, total: 0 };
    try {
      const report = await runBacktest(await clubWithFormerGear(store), estimateLift, (done, total) => {
        progress = { done, total };
        onProgress(done, total);
      });
      newest = { mark, report, workedOutAt: new Date().toISOString() };
      return report;
    } catch (error) {
      failed = { mark, error };
      throw error;
    } finally {
      running = undefined;
    }
  }

  function begin(mark: string, onProgress: (done: number, total: number) => void = () => {}) {
    running ??= run(mark, onProgress);
    return running;
  }

  return {
    async state() {
      const mark = await markNow();
      // What failed once is told, and not tried again before something changes.
      if (failed?.mark === mark) throw failed.error;
      const upToDate = newest?.mark === mark;
      if (!upToDate && !stopped) begin(mark).catch(() => {});
      return {
        report: newest?.report ?? null,
        workedOutAt: newest?.workedOutAt ?? null,
        upToDate,
        progress: { ...progress, running: running !== undefined },
      };
    },
    async report(onProgress) {
      const mark = await markNow();
      return newest?.mark === mark ? newest.report : begin(mark, onProgress);
    },
    stop() {
      stopped = true;
    },
  };
}

/** Days that are planned change nothing of what was lifted. */
async function markOf(store: ClubStore): Promise<string> {
  const { records, log } = await clubWithFormerGear(store);
  return fingerprint([{ ...records, day: [] }, log.map(({ id, struckAt }) => [id, struckAt])]);
}
