import type { CapacityReport } from '#contract/strength/capacityReport.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import { readingDoorOf } from '#server/jobs/clubDoor.ts';
import { type RunWork, work } from '#server/jobs/jobs.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { liftKey } from './liftKey.ts';
import { ownRecords } from './ownRecords.ts';
import type { StrengthEstimator } from './strengthEstimator.ts';

/** Work capacity of a lifter in a lift over the season; null where nothing is known of the lift. */
export type SeasonCapacity = (of: LiftOnDay, signal: AbortSignal) => Promise<CapacityReport | null>;

/** A club of forty in three lifts, twice. */
const keptCount = 240;

/** Follows capacity when asked for, once for each estimate: while that is kept, nothing that it rests on has changed. */
export function seasonCapacity(
  store: ClubStore,
  run: RunWork,
  { ofLifter }: Pick<StrengthEstimator, 'ofLifter'>,
  keepIn: KeptAnswers,
): SeasonCapacity {
  const reports = keptWork({
    most: keptCount,
    width: work.lanes.lifts.threads,
    keepIn: keepIn.of('capacities', keptCount),
    keyOf: (estimate: StrengthEstimate) => liftKey(estimate),
    restsOn: (estimate) => ({ basis: [estimate] }),
    async work(estimate) {
      const { lifterId } = estimate;
      const { records } = await store.records();
      const own = ownRecords(records, lifterId);
      return run('followCapacity', { door: readingDoorOf(store), records: own, estimate });
    },
  });
  return async ({ lifterId, lift, on }, signal) => {
    const [estimate] = await ofLifter(lifterId, on, { lift, signal });
    return estimate === undefined ? null : reports.ask(estimate, { signal });
  };
}
