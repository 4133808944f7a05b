import { EventEmitter } from 'node:events';
import type { Day } from '#contract/records/day.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { EstimateProgress, StrengthSummary } from '#contract/strength/strengthSummary.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import { type KeptAnswers, nothingKept } from '#server/jobs/keptAnswers.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';
import { clubEstimates } from './clubEstimates.ts';
import { keptEstimates } from './keptEstimates.ts';

export interface DayEstimates {
  estimates: StrengthEstimate[];
  /** Lifters whose estimate was not there in time. */
  awaited: string[];
}

/** What the log says of the club's lifters: worked out when asked for, and kept as long as nothing it rests on changes. */
export interface StrengthEstimator {
  /** Every lift of a lifter of which something is known on a day, or one of them. */
  ofLifter(
    lifterId: string,
    on: string,
    only?: { lift?: Lift | undefined; signal?: AbortSignal },
  ): Promise<StrengthEstimate[]>;
  /** The lifts of a training day, as far as they are there before patience ends; the others are worked out first of all. */
  ofDay(day: Pick<Day, 'date' | 'groups'>): Promise<DayEstimates>;
  /** Works out everybody behind everything else that is asked for; resolves when all is done. */
  ofClub(on: string): Promise<void>;
  /** Begins that where something is out of date, and does not wait for its end. */
  bringUpToDate(on: string): Promise<void>;
  /** What is known of everybody by now, in short. */
  summaries(): Promise<StrengthSummary[]>;
  progress(): EstimateProgress;
  /**
   * Calls back when estimates became better without any change of the club: one came that a training day had awaited, the whole
   * log was weighed after sets had been taken in alone, or everybody was weighed anew by what the club had shown. Until the
   * returned function is called.
   */
  onNews(listener: () => void): () => void;
  /** What is under way fails in silence from now on. */
  stop(): void;
}

interface HowEstimated {
  /** Whether `run` has a thread that remembers what estimates are gone on from; without it each is by the whole log. */
  goesOn?: boolean;
  /** Where what was worked out outlives the server. */
  keepIn?: KeptAnswers;
  /** How long a training day waits for its estimates; without it, until all are there. */
  patienceMs?: number;
}

export function strengthEstimator(
  store: ClubStore,
  run: RunWork,
  { goesOn = false, keepIn = nothingKept, patienceMs }: HowEstimated = {},
): StrengthEstimator {
  let stopped = false;
  const news = new EventEmitter<{ news: [] }>().setMaxListeners(0);
  const tell = () => void news.emit('news');
  const onFault = (error: unknown) => {
    // A file that is gone is told by the store, on screen and terminal, not once more for each lift.
    if (!stopped && !(error instanceof Refusal && error.reason === 'unavailable')) console.error(error);
  };
  const estimates = keptEstimates(store, run, goesOn, keepIn, { onWeighed: tell, onFault });
  const { basis, estimateOf } = estimates;
  const club = clubEstimates(estimates, keepIn, { onLearned: tell, onFault });

  return {
    async ofLifter(lifterId, on, { lift: only, signal } = {}) {
      const { marksOf } = await basis();
      const lifts = [...(await marksOf(lifterId)).keys()].filter((lift) => lift === (only ?? lift));
      return found(await Promise.all(lifts.map((lift) => estimateOf({ lifterId, lift, on }, { signal }))));
    },
    async ofDay({ date: on, groups }) {
      const asks = groups.flatMap(({ lift, places }) =>
        places.map(({ lifterId }): LiftOnDay => ({ lifterId, lift, on })),
      );
      const once = new Map(asks.map((ask) => [`${ask.lifterId} ${ask.lift}`, ask]));
      const patience = waitFor(patienceMs);
      const answers = await Promise.all(
        [...once.values()].map(async (ask) => {
          const underWay = estimateOf(ask);
          const estimate = await Promise.race([underWay, patience.over]);
          // Who went away without it asks again when it is there.
          if (estimate === 'late') underWay.then(tell, () => {});
          return { lifterId: ask.lifterId, estimate };
        }),
      );
      patience.end();
      const late = answers.filter(({ estimate }) => estimate === 'late');
      return {
        estimates: answers.flatMap(({ estimate }) => (estimate === 'late' || !estimate ? [] : [estimate])),
        awaited: [...new Set(late.map(({ lifterId }) => lifterId))],
      };
    },
    ofClub: club.run,
    async bringUpToDate(on) {
      if (club.progress().running || (await club.isUpToDate(on))) return;
      club.run(on).catch(onFault);
    },
    summaries: club.summaries,
    progress: club.progress,
    onNews(listener) {
      news.on('news', listener);
      return () => news.off('news', listener);
    },
    stop() {
      stopped = true;
    },
  };
}

function found(estimates: readonly (StrengthEstimate | null)[]): StrengthEstimate[] {
  return estimates.filter((estimate) => estimate !== null);
}

function waitFor(ms: number | undefined): { over: Promise<'late'>; end: () => void } {
  let timer: NodeJS.Timeout | undefined;
  const over = new Promise<'late'>((resolve) => {
    if (ms !== undefined) timer = setTimeout(resolve, ms, 'late');
  });
  return { over, end: () => clearTimeout(timer) };
}
