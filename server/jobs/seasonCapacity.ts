import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { CapacityReport } from '#contract/strength/capacityReport.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { clubWithFormerGear } from './clubWithFormerGear.ts';
import { ownRecords } from './ownRecords.ts';

/** Works a season out from the log and from the estimate that the whole of it gave. */
export type FollowCapacity = (asked: {
  records: ClubRecords;
  log: LoggedSet[];
  estimate: StrengthEstimate;
}) => Promise<CapacityReport>;

/** Work capacity of a lifter in a lift over the season; null where nothing is known of the lift. */
export type SeasonCapacity = (of: LiftOnDay) => Promise<CapacityReport | null>;

/** Follows capacity when asked for, once for each estimate: while that is kept, nothing that it rests on has changed. */
export function seasonCapacity(
  store: ClubStore,
  estimator: { ofLifter(lifterId: string, on: string): Promise<StrengthEstimate[]> },
  followCapacity: FollowCapacity,
): SeasonCapacity {
  const known = new WeakMap<StrengthEstimate, Promise<CapacityReport>>();

  async function follow(estimate: StrengthEstimate): Promise<CapacityReport> {
    const { lifterId } = estimate;
    const { records, log } = await clubWithFormerGear(store, { lifterId });
    return followCapacity({ records: ownRecords(records, lifterId, []), log, estimate });
  }

  return async ({ lifterId, lift, on }) => {
    const estimates = await estimator.ofLifter(lifterId, on);
    const estimate = estimates.find((one) => one.lift === lift);
    if (estimate === undefined) return null;
    const report = known.get(estimate) ?? follow(estimate);
    known.set(estimate, report);
    // A fault is told to whoever asked, and the next one asks anew.
    report.catch(() => known.delete(estimate));
    return report;
  };
}
