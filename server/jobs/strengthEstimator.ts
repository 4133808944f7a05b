import type { Day } from '#contract/records/day.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import type { EstimateProgress, StrengthSummary } from '#contract/strengthSummary.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { clubEstimates } from './clubEstimates.ts';
import type { EstimateLift } from './estimateThreads.ts';
import { type Ask, keptEstimates } from './keptEstimates.ts';

/** What the log says of the club's lifters: worked out when asked for, and kept as long as nothing it rests on changes. */
export interface StrengthEstimator {
  /** Every lift of a lifter of which something is known on a day. */
  ofLifter(lifterId: string, on: string): Promise<StrengthEstimate[]>;
  /** The lifts of a training day. */
  ofDay(day: Pick<Day, 'date' | 'groups'>): Promise<StrengthEstimate[]>;
  /** Works out everybody behind everything else that is asked for; resolves when all is done. */
  ofClub(on: string): Promise<void>;
  /** Begins that where something is out of date, and does not wait for its end. */
  bringUpToDate(on: string): Promise<void>;
  /** What is known of everybody by now, in short. */
  summaries(): Promise<StrengthSummary[]>;
  progress(): EstimateProgress;
  /** Begins nothing more; what is under way fails in silence. */
  stop(): void;
}

export function strengthEstimator(store: ClubStore, estimateLift: EstimateLift): StrengthEstimator {
  let stopped = false;
  const estimates = keptEstimates(store, async (asked) => {
    try {
      return stopped ? null : await estimateLift(asked);
    } catch (error) {
      if (stopped) return null;
      throw error;
    }
  });
  const { basis, estimateOf } = estimates;
  const club = clubEstimates(estimates);

  return {
    async ofLifter(lifterId, on) {
      const { marksOf } = await basis();
      const lifts = [...(await marksOf(lifterId)).keys()];
      return found(await Promise.all(lifts.map((lift) => estimateOf({ lifterId, lift, on }))));
    },
    async ofDay({ date: on, groups }) {
      const asks = groups.flatMap(({ lift, places }) =>
        places.map(({ lifterId }): Ask => ({ lifterId, lift, on })),
      );
      const once = new Map(asks.map((ask) => [`${ask.lifterId} ${ask.lift}`, ask]));
      return found(await Promise.all([...once.values()].map((ask) => estimateOf(ask))));
    },
    ofClub: club.run,
    async bringUpToDate(on) {
      if (club.progress().running || (await club.isUpToDate(on))) return;
      club.run(on).catch((error) => {
        if (!stopped) console.error(error);
      });
    },
    summaries: club.summaries,
    progress: club.progress,
    stop() {
      stopped = true;
    },
  };
}

function found(estimates: readonly (StrengthEstimate | null)[]): StrengthEstimate[] {
  return estimates.filter((estimate) => estimate !== null);
}
